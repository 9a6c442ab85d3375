SELECT value FROM scratch WHERE key = ?1
