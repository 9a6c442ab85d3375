SELECT 1 FROM sqlite_schema WHERE name = ?1 AND sql = ?2
