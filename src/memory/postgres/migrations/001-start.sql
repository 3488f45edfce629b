-- One row for each thing the store knows of itself; 'index' is the sealed secret behind hashed chat ids.
CREATE TABLE meta (name text PRIMARY KEY, value bytea NOT NULL);

-- chat: a keyed hash of its id. saved_day: days since 1970.
CREATE TABLE memories (
  chat bytea PRIMARY KEY,
  revision bigint NOT NULL,
  saved_day integer NOT NULL,
  sealed bytea NOT NULL
);

-- run: the process that took it, 0 where it gave it back. reply: sealed, kept between save and finish.
CREATE TABLE claims (
  update_id bigint PRIMARY KEY,
  run integer NOT NULL,
  at bigint NOT NULL,
  is_done boolean NOT NULL DEFAULT false,
  chat bytea,
  question text,
  answer text,
  reply bytea
);
CREATE INDEX claims_by_question ON claims (chat, question) WHERE chat IS NOT NULL;

-- A group's former id, hashed, and the one it has now.
CREATE TABLE moves (old bytea PRIMARY KEY, target bytea NOT NULL, moved_day integer NOT NULL);
CREATE INDEX moves_by_target ON moves (target);
