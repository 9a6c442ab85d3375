SELECT seq, digest FROM ledger ORDER BY seq DESC LIMIT 1
