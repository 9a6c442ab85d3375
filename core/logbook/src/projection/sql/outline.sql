SELECT body FROM outline WHERE rig = ?1
