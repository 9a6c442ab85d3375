DELETE FROM odometer WHERE rig = ?1 AND seq = ?2
