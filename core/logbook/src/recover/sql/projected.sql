SELECT seq FROM projected WHERE one = 1
