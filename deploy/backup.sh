#!/usr/bin/env bash
# Copies the memory while the bot runs:  deploy/backup.sh FILE
# From DATABASE_URL: a SQLite file through SQLite's own online backup, PostgreSQL through pg_dump.
# The copy is as sealed as the original: keep MEMORY_KEY (or the key file) apart from it, and keep it safe.
set -euo pipefail
to="${1:?say where the copy goes: deploy/backup.sh FILE}"
url="${DATABASE_URL:-sqlite:data/memory.db}"
[ ! -e "$to" ] || { echo "backup: $to is there already" >&2; exit 1; }
umask 077
case "$url" in
  postgres://* | postgresql://*) pg_dump --format=custom --schema=billywatt --file="$to" "$url" ;;
  sqlite:*)
    from="${url#sqlite:}"
    "$(dirname "$0")/../node_modules/.bin/node" --input-type=module - "${from%%\?*}" "$to" <<'JS'
import { backup, DatabaseSync } from 'node:sqlite';
const [from, to] = process.argv.slice(2);
const database = new DatabaseSync(from, { readOnly: true });
await backup(database, to);
database.close();
JS
    ;;
  *) echo "backup: DATABASE_URL must be sqlite:… or postgres://…" >&2; exit 1 ;;
esac
echo "backed up to $to"
