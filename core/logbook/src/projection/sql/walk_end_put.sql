INSERT INTO walk_end (seq) VALUES (?1)
