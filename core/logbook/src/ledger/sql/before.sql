SELECT seq, digest FROM ledger WHERE seq <= ?1 ORDER BY seq DESC LIMIT 1
