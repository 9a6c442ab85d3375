DELETE FROM book WHERE rig = ?1 AND seq = ?2
