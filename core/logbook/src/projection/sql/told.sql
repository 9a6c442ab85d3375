SELECT begun, second_look, grade, disturbed
FROM past
WHERE point = ?1 AND begun < ?2
ORDER BY begun DESC
