SELECT max(seq) FROM ledger
