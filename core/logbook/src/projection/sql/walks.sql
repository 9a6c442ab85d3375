SELECT id, person, scope, started, ended, ending FROM walk WHERE rig = ?1 ORDER BY begun
