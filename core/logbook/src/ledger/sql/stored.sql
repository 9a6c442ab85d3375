SELECT seq, body, digest FROM ledger ORDER BY seq
