SELECT version, seq, digest, newest FROM projected
