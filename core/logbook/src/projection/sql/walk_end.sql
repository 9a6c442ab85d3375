UPDATE walk SET ended = ?3, ending = ?4, counted_on = ?5, last = ?6
WHERE rig = ?1 AND begun = ?2
