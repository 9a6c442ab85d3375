SELECT seq, body FROM ledger WHERE kind IN ('from_backup', 'recovered') ORDER BY seq
