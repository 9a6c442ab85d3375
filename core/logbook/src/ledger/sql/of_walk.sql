SELECT seq, body FROM ledger WHERE seq BETWEEN ?1 AND ?2 AND walk = ?3 ORDER BY seq
