SELECT counted_on FROM walk WHERE rig = ?1 AND counted_on IS NOT NULL ORDER BY begun DESC LIMIT 1
