SELECT past.walk, walk.started, past.body
FROM past JOIN walk ON walk.id = past.walk
WHERE past.point = ?1
ORDER BY past.begun
