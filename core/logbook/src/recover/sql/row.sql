SELECT body, digest FROM ledger WHERE seq = ?1
