SELECT seq, body FROM ledger ORDER BY seq
