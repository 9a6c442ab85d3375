SELECT
    (SELECT count(*) FROM origin WHERE seq > ?1),
    (SELECT count(*) FROM walk_end WHERE seq > ?1)
