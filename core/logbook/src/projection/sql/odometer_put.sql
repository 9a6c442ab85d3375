INSERT INTO odometer (rig, seq, day, body) VALUES (?1, ?2, ?3, ?4)
