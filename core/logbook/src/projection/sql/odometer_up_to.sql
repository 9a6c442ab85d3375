SELECT seq, day, body FROM odometer WHERE rig = ?1 AND day <= ?2 ORDER BY day DESC, seq DESC LIMIT 1
