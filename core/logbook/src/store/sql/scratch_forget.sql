DELETE FROM scratch WHERE key = ?1
