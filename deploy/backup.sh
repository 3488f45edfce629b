#!/usr/bin/env bash
# Copies the memory while the bot runs:  deploy/backup.sh FILE
# From DATABASE_URL: a SQLite file through SQLite's own online backup, PostgreSQL through pg_dump.
# The copy is as sealed as the original: keep MEMORY_KEY (or the key file) apart from it, and keep it safe.
set -euo pipefail
to="${1:?say where the copy goes: deploy/backup.sh FILE}"
# shellcheck source=deploy/database.sh
. "$(dirname "$0")/database.sh"
[ ! -e "$to" ] || { echo "backup: $to is there already" >&2; exit 1; }
umask 077
# Under its own name only once it is whole.
part="$to.part"
trap 'rm -f "$part"' EXIT
case "$url" in
  postgres://* | postgresql://*) pg_dump --format=custom --schema=billywatt --file="$part" --dbname="$url" ;;
  sqlite:*) "$node" "$root/deploy/sqlite.mjs" backup "$url" "$part" ;;
  *) echo "backup: nothing is kept with DATABASE_URL=$url" >&2; exit 1 ;;
esac
mv "$part" "$to"
echo "backed up to $to"
