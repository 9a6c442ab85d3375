SELECT count(*) FROM finding WHERE rig = ?1 AND open = 1
