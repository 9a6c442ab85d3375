SELECT point, since, by_hand, held, moved FROM ended WHERE rig = ?1 ORDER BY begun, point
