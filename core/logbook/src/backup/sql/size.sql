SELECT coalesce(sum(octet_length(body) + 90), 0) FROM ledger
