INSERT INTO standing
    (rig, point, moved_running, disturbed, seen, seen_on, tight_since, tight_set, tight_held)
VALUES (?1, ?2, ?3, ?5, ?6, ?7, ?8, ?9, ?10)
ON CONFLICT (rig, point) DO UPDATE
SET moved_running = min(moved_running * ?4 + ?3, 255),
    disturbed = coalesce(excluded.disturbed, disturbed),
    seen = coalesce(excluded.seen, seen),
    seen_on = excluded.seen_on,
    tight_since = excluded.tight_since,
    tight_set = excluded.tight_set,
    tight_held = excluded.tight_held
