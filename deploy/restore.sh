#!/usr/bin/env bash
# Puts a copy made by backup.sh back:  deploy/restore.sh FILE
# Stop the bot first. What is there now is set aside (SQLite) or replaced in one transaction (PostgreSQL).
set -euo pipefail
from="${1:?say which copy to put back: deploy/restore.sh FILE}"
# shellcheck source=deploy/database.sh
. "$(dirname "$0")/database.sh"
[ -s "$from" ] || { echo "restore: there is nothing in $from" >&2; exit 1; }
umask 077
case "$url" in
  postgres://* | postgresql://*)
    # The whole script first: half of one, from a damaged copy, must not run.
    sql="$(mktemp)"
    trap 'rm -f "$sql"' EXIT
    cat > "$sql" <<'SQL'
DO $$ BEGIN
  IF EXISTS (
    SELECT FROM pg_stat_activity WHERE datname = current_database() AND application_name = 'billywatt'
  ) THEN RAISE 'a bot is connected: stop the bot first'; END IF;
END $$;
SET client_min_messages = warning;
DROP SCHEMA IF EXISTS billywatt CASCADE;
SQL
    pg_restore --no-owner --no-privileges --file=- "$from" >> "$sql"
    psql --no-psqlrc --quiet --output=/dev/null --set=ON_ERROR_STOP=1 --single-transaction --file="$sql" \
      --dbname="$url" ;;
  sqlite:*) "$node" "$root/deploy/sqlite.mjs" restore "$url" "$from" ;;
  *) echo "restore: nothing is kept with DATABASE_URL=$url" >&2; exit 1 ;;
esac
echo "restored from $from"
