SELECT rig, begun, last FROM walk WHERE id = ?1
