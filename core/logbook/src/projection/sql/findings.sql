SELECT walk, day, body, (
    SELECT body FROM follow_up WHERE finding = finding.id ORDER BY seq DESC LIMIT 1
)
FROM finding
WHERE rig = ?1
ORDER BY seq, place
