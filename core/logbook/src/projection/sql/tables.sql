SELECT name FROM sqlite_schema
WHERE type = 'table' AND name NOT IN ('ledger', 'scratch', 'projected') AND name NOT LIKE 'sqlite_%'
ORDER BY name
