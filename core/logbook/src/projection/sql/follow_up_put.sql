INSERT INTO follow_up (finding, seq, body) VALUES (?1, ?2, ?3)
