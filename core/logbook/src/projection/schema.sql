-- Computed from the ledger. Any change here raises the version in mod.rs.

-- The newest facts of each rig.
CREATE TABLE rig (
    rig TEXT NOT NULL PRIMARY KEY,
    body TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Every record of every book as it was put, by the entry that put it, so that a book can be read as
-- it stood at any entry. Rows of one whole book share the entry; its rig row has whole = 1.
CREATE TABLE book (
    rig TEXT NOT NULL,
    list TEXT NOT NULL,
    seq INTEGER NOT NULL,
    place INTEGER NOT NULL,
    whole INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (rig, list, seq, place)
) STRICT, WITHOUT ROWID;

-- Walks, by the entry that started them.
CREATE TABLE walk (
    rig TEXT NOT NULL,
    begun INTEGER NOT NULL,
    id TEXT NOT NULL UNIQUE,
    person TEXT NOT NULL,
    scope TEXT NOT NULL,
    started TEXT NOT NULL,
    -- The entry that ended it, when, and how.
    last INTEGER,
    ended TEXT,
    ending TEXT,
    -- The day of the end, where the whole rig was gone through to the end.
    counted_on TEXT,
    PRIMARY KEY (rig, begun)
) STRICT, WITHOUT ROWID;

-- What was noted at each point, walk by walk; all of one point stands together.
CREATE TABLE past (
    point TEXT NOT NULL,
    begun INTEGER NOT NULL,
    walk TEXT NOT NULL,
    second_look INTEGER NOT NULL,
    grade TEXT,
    disturbed INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (point, begun)
) STRICT, WITHOUT ROWID;

-- Findings, by the entry that raised them.
CREATE TABLE finding (
    rig TEXT NOT NULL,
    seq INTEGER NOT NULL,
    place INTEGER NOT NULL,
    walk TEXT,
    day TEXT NOT NULL,
    id TEXT NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (rig, seq, place)
) STRICT, WITHOUT ROWID;

-- What was decided about findings, oldest first.
CREATE TABLE follow_up (
    finding TEXT NOT NULL,
    seq INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (finding, seq)
) STRICT, WITHOUT ROWID;

-- Odometer notes.
CREATE TABLE odometer (
    rig TEXT NOT NULL,
    seq INTEGER NOT NULL,
    day TEXT NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (rig, seq)
) STRICT, WITHOUT ROWID;
