-- drop_day: the day (since 1970) from which a chat that the bot was shut out of is to go.
ALTER TABLE memories ADD COLUMN drop_day INTEGER;
