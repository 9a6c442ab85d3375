-- What a person entered; what the logbook told of itself is not missed.
SELECT count(*) FROM ledger WHERE seq > ?1 AND kind NOT IN ('from_backup', 'recovered')
