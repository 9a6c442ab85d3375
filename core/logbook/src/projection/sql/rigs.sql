SELECT glance FROM rig
