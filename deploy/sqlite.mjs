// What backup.sh and restore.sh do for SQLite:  node deploy/sqlite.mjs backup|restore URL COPY
import { chownSync, copyFileSync, existsSync, mkdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { backup, DatabaseSync } from 'node:sqlite';

const busy = 5;

/** The file that `sqlite:FILE` or `sqlite:FILE?…` names. */
const fileOf = url => url.replace(/^sqlite:(\/\/)?/, '').split('?')[0];

/** Copies the database as it is at one moment, while the bot goes on writing. */
async function copyOut(file, copy) {
  const database = new DatabaseSync(file, { readOnly: true, timeout: 10_000 });
  // All pages at once: a copy in parts starts anew at each write in between, on a busy bot for ever.
  await backup(database, copy, { rate: 2 ** 31 - 1 });
  database.close();
}

/** @throws Error when the file is damaged or none of SQLite's */
function check(file) {
  const database = new DatabaseSync(file);
  try {
    const { quick_check: verdict } = database.prepare('PRAGMA quick_check').get();
    if (verdict !== 'ok') throw new Error(verdict);
  } catch (error) {
    throw new Error(`the copy is damaged, nothing was changed: ${error.message}`);
  } finally {
    database.close();
  }
}

/** Takes the lock that a running bot holds on its file (src/memory/sqlite/file.ts). */
function lockOut(file) {
  const lock = new DatabaseSync(`${file}-lock`, { timeout: 500 });
  try {
    lock.exec('PRAGMA locking_mode = EXCLUSIVE; BEGIN EXCLUSIVE');
  } catch (error) {
    throw error.errcode === busy ? new Error(`${file} is in use: stop the bot first`) : error;
  }
  return lock;
}

/** Looks the copy over, sets aside what is there, and puts the copy in its place. */
function putBack(file, copy) {
  const folder = dirname(file);
  mkdirSync(folder, { recursive: true });
  const lock = lockOut(file);
  const fresh = `${file}.restoring`;
  try {
    copyFileSync(copy, fresh);
    check(fresh);
    const aside = `${file}.before-restore-${new Date().toISOString().replace(/[-:]|\.\d+/g, '')}`;
    for (const part of ['', '-wal', '-shm'])
      if (existsSync(`${file}${part}`)) renameSync(`${file}${part}`, `${aside}${part}`);
    renameSync(fresh, file);
  } finally {
    for (const part of ['', '-wal', '-shm']) rmSync(`${fresh}${part}`, { force: true });
    lock.close();
  }
  // Put back by root, it is still the bot's, whose folder it lies in.
  const { uid, gid } = statSync(folder);
  if (process.getuid?.() === 0) for (const path of [file, `${file}-lock`]) chownSync(path, uid, gid);
}

const [work, url, copy] = process.argv.slice(2);
try {
  await (work === 'backup' ? copyOut : putBack)(fileOf(url), copy);
} catch (error) {
  console.error(`${work}: ${error.message}`);
  process.exitCode = 1;
}
