SELECT seq, body FROM ledger WHERE id = ?1
