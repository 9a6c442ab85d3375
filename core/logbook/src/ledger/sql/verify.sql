SELECT seq, body, digest, id, rig, walk, kind, version FROM ledger ORDER BY seq
