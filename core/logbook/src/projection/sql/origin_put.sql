INSERT INTO origin (seq) VALUES (?1)
