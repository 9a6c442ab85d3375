SELECT seq, body, digest, id, rig, walk, kind, version FROM ledger
WHERE seq BETWEEN ?1 AND ?2
ORDER BY seq
