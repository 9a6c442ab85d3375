SELECT count(*), count(CASE kind WHEN 'end' THEN 1 END) FROM ledger
WHERE seq > ?1 AND kind NOT IN ('from_backup', 'recovered')
