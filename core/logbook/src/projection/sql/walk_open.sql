SELECT id, begun FROM walk WHERE rig = ?1 AND ended IS NULL ORDER BY begun DESC LIMIT 1
