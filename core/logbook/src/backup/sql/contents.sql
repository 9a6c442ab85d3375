SELECT count(DISTINCT CASE kind WHEN 'book' THEN rig END),
    count(CASE kind WHEN 'start' THEN 1 END),
    count(CASE kind WHEN 'end' THEN 1 END)
FROM ledger
