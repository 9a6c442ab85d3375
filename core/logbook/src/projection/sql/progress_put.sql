INSERT INTO projected (one, version, seq, digest, newest) VALUES (1, ?1, ?2, ?3, ?4)
ON CONFLICT (one) DO UPDATE
SET version = excluded.version, seq = excluded.seq, digest = excluded.digest, newest = excluded.newest
