INSERT INTO past (point, begun, walk, body) VALUES (?1, ?2, ?3, ?4)
ON CONFLICT (point, begun) DO UPDATE SET body = excluded.body
