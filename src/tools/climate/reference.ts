import { readFileSync } from 'node:fs';

/** A table of months by cells, rows from the south. */
export interface Table {
  readonly southDeg: number;
  readonly westDeg: number;
  readonly stepDeg: number;
  readonly rows: number;
  readonly cols: number;
  /** A row of months for each cell. */
  readonly cells: readonly (readonly number[])[];
}

export interface Reference {
  /** Sun on flat ground, kWh/m² a day, by month. */
  readonly sun: Table;
  /** °C at sea level: twelve means of the day's highest, then twelve of the night's lowest. */
  readonly temperature: Table;
  /** Mean height of the land in each cell of `sun`, m; undefined over sea. */
  readonly heightM: readonly (number | undefined)[];
}

const lays = {
  sun: { southDeg: -59.5, westDeg: -179.5, stepDeg: 1, rows: 145, cols: 360 },
  temperature: { southDeg: -60, westDeg: -180, stepDeg: 2.5, rows: 59, cols: 144 },
} as const;
const headBytes = 64;
const months = Array.from({ length: 12 }, (_, m) => m);

/** Reads a reference file: 64 bytes of head, then bytes of sun (0.05 kWh/m²), height (25 m), highest and lowest (0.5 °C). */
export function readReference(path: string): Reference {
  const file = readFileSync(path);
  if (file.toString('latin1', 0, 4) !== 'CLIM') throw new Error(`${path} is no climate reference`);
  const cellsOf = ({ rows, cols }: { rows: number; cols: number }) => rows * cols;
  const heightAt = headBytes + cellsOf(lays.sun) * 12;
  const highestAt = heightAt + cellsOf(lays.sun);
  const lowestAt = highestAt + cellsOf(lays.temperature) * 12;
  const all = <T>(count: number, of: (cell: number) => T): T[] =>
    Array.from({ length: count }, (_, i) => of(i));
  // Temperatures are stored from the north.
  const { rows, cols } = lays.temperature;
  const fromNorth = (cell: number) => (rows - 1 - Math.floor(cell / cols)) * cols + (cell % cols);
  const degrees = (from: number, cell: number) =>
    months.map(m => file.readInt8(from + fromNorth(cell) * 12 + m) * 0.5);
  return {
    sun: {
      ...lays.sun,
      cells: all(cellsOf(lays.sun), cell =>
        months.map(m => (file[headBytes + cell * 12 + m] as number) * 0.05),
      ),
    },
    temperature: {
      ...lays.temperature,
      cells: all(cellsOf(lays.temperature), cell => [
        ...degrees(highestAt, cell),
        ...degrees(lowestAt, cell),
      ]),
    },
    heightM: all(cellsOf(lays.sun), cell => {
      const steps = file[heightAt + cell] as number;
      return steps === 255 ? undefined : steps * 25;
    }),
  };
}
