INSERT INTO past (point, begun, walk, second_look, grade, disturbed, body)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
ON CONFLICT (point, begun) DO UPDATE
SET grade = excluded.grade, disturbed = excluded.disturbed, body = excluded.body
