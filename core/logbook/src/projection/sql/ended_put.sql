INSERT INTO ended (rig, begun, point, since, by_hand, held, moved) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
