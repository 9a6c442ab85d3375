SELECT glance FROM rig WHERE rig = ?1
