INSERT INTO rig (rig, glance) VALUES (?1, ?2) ON CONFLICT (rig) DO UPDATE SET glance = excluded.glance
