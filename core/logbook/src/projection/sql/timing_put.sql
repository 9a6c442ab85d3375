INSERT INTO timing (rig, seq, act, day, body) VALUES (?1, ?2, ?3, ?4, ?5)
