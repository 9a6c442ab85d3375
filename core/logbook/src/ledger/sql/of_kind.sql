SELECT seq, body FROM ledger WHERE kind = ?1 ORDER BY seq
