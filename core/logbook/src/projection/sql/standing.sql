SELECT point, moved_running, disturbed, seen, seen_on, tight_since, tight_set, tight_held FROM standing WHERE rig = ?1
