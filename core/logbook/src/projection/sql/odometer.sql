SELECT seq, day, body FROM odometer WHERE rig = ?1 ORDER BY seq
