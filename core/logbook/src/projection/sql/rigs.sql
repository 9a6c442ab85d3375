SELECT body FROM rig
