DELETE FROM timing WHERE rig = ?1 AND seq = ?2
