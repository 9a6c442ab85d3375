INSERT INTO ledger (seq, id, rig, walk, kind, version, body, digest)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)
