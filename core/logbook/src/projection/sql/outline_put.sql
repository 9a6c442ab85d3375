INSERT INTO outline (rig, body) VALUES (?1, ?2) ON CONFLICT (rig) DO UPDATE SET body = excluded.body
