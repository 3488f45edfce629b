import { brotliDecompressSync } from 'node:zlib';
import { readPlane } from './codec.ts';
import type { Grid, Lay, Patterns } from './grid.ts';

/** What stands before the planes: where the grids lie and what their numbers mean. */
export interface Head {
  /** Share of the outside sun that reaches flat ground, by month. */
  readonly clearness: Patterns;
  /** °C at sea level: twelve means of the day's highest, then twelve of the night's lowest. */
  readonly temperature: Patterns;
  /** Mean height of the land in a cell. */
  readonly height: Lay & { readonly quantumM: number };
}

/** The world's climate as it is kept in memory. */
export interface World {
  readonly clearness: Grid;
  readonly temperature: Grid;
  /** A plane of steps of `quantumM`; −1 over sea. */
  readonly height: Head['height'] & { readonly steps: Int16Array };
}

/** Reads the file that `npm run fit:climate` writes: length of the head, head as JSON, planes; all under Brotli. */
export function readWorld(file: Uint8Array): World {
  const bytes = brotliDecompressSync(file);
  const length = bytes.readUInt32LE(0);
  const head = JSON.parse(bytes.toString('utf8', 4, 4 + length)) as Head;
  let at = 4 + length;
  const next = (lay: Lay): Int16Array => {
    const { values, end } = readPlane(bytes, at, lay);
    at = end;
    return values;
  };
  const grid = (patterns: Patterns): Grid => ({
    ...patterns,
    planes: patterns.basis.map(() => next(patterns)),
  });
  const clearness = grid(head.clearness);
  const temperature = grid(head.temperature);
  return { clearness, temperature, height: { ...head.height, steps: next(head.height) } };
}
