SELECT seq, body, digest FROM ledger WHERE seq BETWEEN ?1 AND ?2 ORDER BY seq
