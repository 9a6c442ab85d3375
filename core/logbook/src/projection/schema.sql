-- Computed from the ledger. Any change here raises the version in mod.rs.

-- What the list of rigs tells of each, and what its first screen does, so that neither reads a book
-- or the years behind it.
CREATE TABLE rig (
    rig TEXT NOT NULL PRIMARY KEY,
    glance TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE outline (
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
    PRIMARY KEY (rig, begun)
) STRICT, WITHOUT ROWID;

-- What was noted at each point, walk by walk; all of one point stands together.
CREATE TABLE past (
    point TEXT NOT NULL,
    begun INTEGER NOT NULL,
    walk TEXT NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (point, begun)
) STRICT, WITHOUT ROWID;

-- What the walks behind tell of each point, in short; walks are told by the entry that started them.
CREATE TABLE standing (
    rig TEXT NOT NULL,
    point TEXT NOT NULL,
    -- In how many walks running it had moved.
    moved_running INTEGER NOT NULL,
    -- The last walk in which it was set or remade.
    disturbed INTEGER,
    -- The last walk in which it was judged or looked at.
    seen INTEGER,
    -- The last day on which it was seen by any means, and since when it is known to be tight.
    seen_on TEXT,
    tight_since TEXT,
    tight_set INTEGER,
    tight_held TEXT,
    PRIMARY KEY (rig, point)
) STRICT, WITHOUT ROWID;

-- Findings, by the entry that raised them.
CREATE TABLE finding (
    rig TEXT NOT NULL,
    seq INTEGER NOT NULL,
    place INTEGER NOT NULL,
    walk TEXT,
    day TEXT NOT NULL,
    id TEXT NOT NULL,
    open INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (rig, seq, place)
) STRICT, WITHOUT ROWID;
CREATE INDEX finding_open ON finding (rig) WHERE open = 1;

-- What was decided about findings, oldest first.
CREATE TABLE follow_up (
    finding TEXT NOT NULL,
    seq INTEGER NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (finding, seq)
) STRICT, WITHOUT ROWID;

-- Lives of terminals that a walk ended: since when tight (nothing where it was never known to be),
-- whether set by a known hand, last found held, found moved (nothing where it was undone by us).
CREATE TABLE ended (
    rig TEXT NOT NULL,
    begun INTEGER NOT NULL,
    point TEXT NOT NULL,
    since TEXT,
    by_hand INTEGER,
    held TEXT,
    moved TEXT,
    PRIMARY KEY (rig, begun, point)
) STRICT, WITHOUT ROWID;

-- The acts that tell when to look again: notes of odometer and use, rules, what was put off.
CREATE TABLE timing (
    rig TEXT NOT NULL,
    seq INTEGER NOT NULL,
    act TEXT NOT NULL,
    day TEXT NOT NULL,
    body TEXT NOT NULL,
    PRIMARY KEY (rig, seq)
) STRICT, WITHOUT ROWID;

-- The entries that ended a walk, for a reminder to back up.
CREATE TABLE walk_end (
    seq INTEGER PRIMARY KEY
) STRICT;

-- The entries in which the logbook tells where it comes from. How it reads does not hang on them.
CREATE TABLE origin (
    seq INTEGER PRIMARY KEY
) STRICT;
