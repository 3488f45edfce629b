import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** How many lines of what was typed are kept. */
const mostLines = 500;

/** Reads the lines typed before, newest first, as readline wants them. None, where the file can't be read. */
export function readHistory(file: string): string[] {
  try {
    return readFileSync(file, 'utf8').split('\n').filter(Boolean).toReversed().slice(0, mostLines);
  } catch {
    return [];
  }
}

/** Keeps the lines typed, for the owner's eyes only. A disk that refuses costs the history, not the talk. */
export function writeHistory(file: string, newestFirst: readonly string[]): void {
  try {
    mkdirSync(dirname(file), { recursive: true });
    const lines = newestFirst.slice(0, mostLines).toReversed();
    writeFileSync(file, lines.map(line => `${line}\n`).join(''), { mode: 0o600 });
  } catch {}
}
