# shellcheck shell=bash
# For backup.sh and restore.sh. Sets `url`, where memory lives, read as the bot reads it: the environment first, then
# .env in this folder. PostgreSQL's password goes into the environment, so that no list of processes shows it.
root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
# The Node that npm brought, else (in a container) the system's.
node="$root/node_modules/.bin/node"
[ -x "$node" ] || node=node
told="$("$node" --input-type=module - "$root" <<'JS'
const { readConfig } = await import(`${process.argv[2]}/src/config.ts`);
try {
  const { DATABASE_URL } = readConfig(process.env);
  const url = DATABASE_URL.startsWith('postgres') ? new URL(DATABASE_URL) : { href: DATABASE_URL, password: '' };
  const password = decodeURIComponent(url.password);
  url.password = '';
  console.log(`${url.href}\n${password}`);
} catch (error) {
  console.error(error.message);
  process.exitCode = 1;
}
JS
)"
url="${told%%$'\n'*}"
if [ "$told" != "$url" ]; then export PGPASSWORD="${told#*$'\n'}"; fi
