SELECT act, day, body FROM timing WHERE rig = ?1 ORDER BY seq
