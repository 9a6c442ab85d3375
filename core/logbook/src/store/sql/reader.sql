PRAGMA query_only = 1;
PRAGMA trusted_schema = 0;
PRAGMA cell_size_check = 1;
PRAGMA temp_store = 2;
BEGIN;
