DELETE FROM odometer WHERE rig = ?1 AND day = ?2 AND seq = ?3
