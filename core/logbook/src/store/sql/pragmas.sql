PRAGMA synchronous = EXTRA;
PRAGMA fullfsync = 1;
PRAGMA checkpoint_fullfsync = 1;
PRAGMA foreign_keys = 1;
PRAGMA trusted_schema = 0;
PRAGMA cell_size_check = 1;
PRAGMA temp_store = 2;
