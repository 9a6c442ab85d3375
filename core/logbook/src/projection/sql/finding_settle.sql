UPDATE finding SET open = ?3 WHERE rig = ?1 AND id = ?2
