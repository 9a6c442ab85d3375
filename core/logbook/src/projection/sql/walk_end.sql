UPDATE walk SET ended = ?3, ending = ?4, last = ?5 WHERE rig = ?1 AND begun = ?2
