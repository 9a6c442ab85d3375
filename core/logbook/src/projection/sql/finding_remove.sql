DELETE FROM finding WHERE rig = ?1 AND seq = ?2
