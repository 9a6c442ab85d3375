-- What lasts. Everything else is computed from the ledger and can be dropped.
CREATE TABLE ledger (
    seq INTEGER PRIMARY KEY,
    -- The act's name, so that an act sent twice is recorded once.
    id TEXT NOT NULL UNIQUE,
    rig TEXT NOT NULL,
    walk TEXT,
    kind TEXT NOT NULL,
    version INTEGER NOT NULL,
    -- The whole entry as canonical JSON (RFC 8785); the columns before it only repeat parts of it.
    body TEXT NOT NULL,
    -- SHA-256 over the digest before and the bytes of the body.
    digest BLOB NOT NULL CHECK (length(digest) = 32)
) STRICT;

-- What may be lost: where a screen stood, settings, photos not yet entered.
CREATE TABLE scratch (
    key TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- How far the computed tables have come, and in which form they are.
CREATE TABLE projected (
    one INTEGER PRIMARY KEY CHECK (one = 1),
    version INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    digest BLOB NOT NULL,
    -- The newest wall clock of the ledger, as JSON; empty before the first entry.
    newest TEXT NOT NULL
) STRICT;
