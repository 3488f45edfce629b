-- seal: who has no key can't make one, so a move that the bot did not make is refused.
ALTER TABLE moves ADD COLUMN seal bytea;
