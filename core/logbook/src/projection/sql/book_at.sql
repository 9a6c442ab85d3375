SELECT body FROM book
WHERE rig = ?1 AND seq <= ?2 AND seq >= (
    SELECT max(seq) FROM book WHERE rig = ?1 AND list = 'a-rig' AND whole = 1 AND seq <= ?2
)
ORDER BY list, seq, place
