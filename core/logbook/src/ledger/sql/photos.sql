SELECT seq, body FROM ledger WHERE kind = 'photo' ORDER BY seq
