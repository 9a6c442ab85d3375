INSERT INTO finding (rig, seq, place, walk, day, id, open, body) VALUES (?1, ?2, ?3, ?4, ?5, ?6, 1, ?7)
