DELETE FROM follow_up WHERE finding = ?1 AND seq = ?2
