INSERT INTO standing (rig, point, moved_running, disturbed, seen) VALUES (?1, ?2, ?3, ?5, ?6)
ON CONFLICT (rig, point) DO UPDATE
SET moved_running = min(moved_running * ?4 + ?3, 255),
    disturbed = coalesce(excluded.disturbed, disturbed),
    seen = coalesce(excluded.seen, seen)
