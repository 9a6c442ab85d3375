SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL ORDER BY name
