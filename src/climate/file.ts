import { brotliDecompressSync } from 'node:zlib';
import { readPlane } from './codec.ts';
import type { Grid, Lay, Patterns } from './grid.ts';

/** The months of a parallel where people live, for places of which nothing else is known. Rows from the south, twelve months each. */
export interface Latitudes {
  readonly southDeg: number;
  readonly stepDeg: number;
  /** Clearness, and its standard deviation along the parallel, in steps. */
  readonly clearness: readonly (readonly number[])[];
  readonly clearnessSd: readonly (readonly number[])[];
  /** Mean of the days' highest and the nights' lowest at sea level, in steps. */
  readonly dayMax: readonly (readonly number[])[];
  readonly nightMin: readonly (readonly number[])[];
  /** Standard deviation of the temperature along the parallel, each place at its height, in steps. */
  readonly temperatureSd: readonly (readonly number[])[];
  /** Mean height of the land, m; one a row. */
  readonly heightM: readonly number[];
  /** What a step is worth: of clearness, of degrees (K). */
  readonly quantum: number;
  readonly quantumK: number;
}

/** What stands before the planes: where the grids lie and what their numbers mean. */
export interface Head {
  /** Share of the outside sun that reaches flat ground, by month. */
  readonly clearness: Patterns;
  /** °C at sea level: twelve means of the day's highest, then twelve of the night's lowest. */
  readonly temperature: Patterns;
  /** Mean height of the land in a cell. */
  readonly height: Lay & { readonly quantumM: number };
  readonly latitudes: Latitudes;
}

/** The world's climate as it is kept in memory. */
export interface World {
  readonly clearness: Grid;
  readonly temperature: Grid;
  /** A plane of steps of `quantumM`; −1 over sea. */
  readonly height: Head['height'] & { readonly steps: Int16Array };
  readonly latitudes: Latitudes;
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
  const height = { ...head.height, steps: next(head.height) };
  return { clearness, temperature, height, latitudes: head.latitudes };
}
