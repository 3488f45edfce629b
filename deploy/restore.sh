#!/usr/bin/env bash
# Puts a copy made by backup.sh back:  deploy/restore.sh FILE
# Stop the bot first. What is there now is set aside (SQLite) or replaced in one transaction (PostgreSQL).
set -euo pipefail
from="${1:?say which copy to put back: deploy/restore.sh FILE}"
url="${DATABASE_URL:-sqlite:data/memory.db}"
[ -s "$from" ] || { echo "restore: there is nothing in $from" >&2; exit 1; }
umask 077
case "$url" in
  postgres://* | postgresql://*)
    pg_restore --clean --if-exists --no-owner --single-transaction --dbname="$url" "$from" ;;
  sqlite:*)
    to="${url#sqlite:}"
    to="${to%%\?*}"
    "$(dirname "$0")/../node_modules/.bin/node" --input-type=module - "$from" <<'JS'
import { DatabaseSync } from 'node:sqlite';
const database = new DatabaseSync(process.argv[2], { readOnly: true });
const { quick_check: verdict } = database.prepare('PRAGMA quick_check').get();
database.close();
if (verdict !== 'ok') throw new Error(`the copy is damaged: ${verdict}`);
JS
    aside="before-restore-$(date -u +%Y%m%dT%H%M%SZ)"
    for part in "" -wal -shm; do [ ! -e "$to$part" ] || mv "$to$part" "$to.$aside$part"; done
    mkdir -p "$(dirname "$to")"
    cp "$from" "$to" ;;
  *) echo "restore: DATABASE_URL must be sqlite:… or postgres://…" >&2; exit 1 ;;
esac
echo "restored from $from"
