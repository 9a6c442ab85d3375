SELECT body FROM follow_up WHERE finding = ?1 ORDER BY seq DESC LIMIT 1
