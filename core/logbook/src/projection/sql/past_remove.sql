DELETE FROM past WHERE point = ?1 AND begun = ?2
