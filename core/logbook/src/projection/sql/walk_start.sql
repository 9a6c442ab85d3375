INSERT INTO walk (rig, begun, id, person, scope, started) VALUES (?1, ?2, ?3, ?4, ?5, ?6)
