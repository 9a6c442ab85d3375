SELECT point, moved_running, disturbed, seen FROM standing WHERE rig = ?1
