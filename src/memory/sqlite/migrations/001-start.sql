-- One row for each thing the store knows of itself; 'index' is the sealed secret behind hashed chat ids.
CREATE TABLE meta (name TEXT PRIMARY KEY, value BLOB NOT NULL) STRICT;

-- chat: a keyed hash of its id. saved_day: days since 1970.
CREATE TABLE memories (
  chat BLOB PRIMARY KEY,
  revision INTEGER NOT NULL,
  saved_day INTEGER NOT NULL,
  sealed BLOB NOT NULL
) STRICT;

-- run: the process that took it, 0 where it gave it back. reply: sealed, kept between save and finish.
CREATE TABLE claims (
  update_id INTEGER PRIMARY KEY,
  run INTEGER NOT NULL,
  at INTEGER NOT NULL,
  is_done INTEGER NOT NULL DEFAULT 0,
  chat BLOB,
  question TEXT,
  answer TEXT,
  reply BLOB
) STRICT;
CREATE INDEX claims_by_question ON claims (chat, question) WHERE chat IS NOT NULL;

-- A group's former id, hashed, and the one it has now.
CREATE TABLE moves (old BLOB PRIMARY KEY, target BLOB NOT NULL, moved_day INTEGER NOT NULL) STRICT;
CREATE INDEX moves_by_target ON moves (target);
