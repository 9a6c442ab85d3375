INSERT INTO book (rig, list, seq, place, whole, body) VALUES (?1, ?2, ?3, ?4, ?5, ?6)
