-- How many questions somebody asked within a minute. what: a keyed hash of chat and person. since: ms since 1970.
-- A crash may empty it.
CREATE UNLOGGED TABLE tallies (what bytea PRIMARY KEY, since bigint NOT NULL, count integer NOT NULL);
