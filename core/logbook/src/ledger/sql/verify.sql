SELECT seq, id, rig, walk, kind, version, body, digest FROM ledger ORDER BY seq
