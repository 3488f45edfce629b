import { present } from '#basics/present.ts';
import type { Latitudes } from '../../climate/file.ts';
import { lapseKPerKm } from '../../climate/world.ts';
import { rowAt } from './bilinear.ts';
import type { Town } from './measure.ts';
import type { Reference, Table } from './reference.ts';

const lay = { southDeg: -60, stepDeg: 5, rows: 30 } as const;
const fineness = { quantum: 0.005, quantumK: 0.5 } as const;

/** A square degree where people live. */
interface Cell {
  readonly latitudeDeg: number;
  readonly heightM: number;
  readonly clearness: readonly number[];
  /** At sea level: twelve means of the highest, twelve of the lowest. */
  readonly degrees: readonly number[];
}

/** The cells of the reference that hold a town, each once. */
export function inhabited(
  { temperature, heightM }: Reference,
  clearness: Table,
  towns: readonly Town[],
): Cell[] {
  const { southDeg, westDeg, stepDeg, cols, rows } = clearness;
  const cellOf = ({ latitudeDeg, longitudeDeg }: Town): number => {
    const row = Math.round((latitudeDeg - southDeg) / stepDeg);
    const col = Math.round((longitudeDeg - westDeg) / stepDeg);
    return Math.min(rows - 1, Math.max(0, row)) * cols + (col % cols);
  };
  return [...new Set(towns.map(cellOf))]
    .sort((a, b) => a - b)
    .map(cell => {
      const latitudeDeg = southDeg + stepDeg * Math.floor(cell / cols);
      const longitudeDeg = westDeg + stepDeg * (cell % cols);
      return {
        latitudeDeg,
        heightM: heightM[cell] ?? 0,
        clearness: present(clearness.cells[cell]),
        degrees: rowAt(temperature, latitudeDeg, longitudeDeg),
      };
    });
}

/** A mean of the cells about each row, the nearer the more, up to a step away; rows where nobody lives are like the next. */
function byRow(cells: readonly Cell[], of: (cell: Cell) => number): number[] {
  const means = Array.from({ length: lay.rows }, (_, row) => {
    const middle = lay.southDeg + row * lay.stepDeg;
    let [sum, total] = [0, 0];
    for (const cell of cells) {
      const weight = 1 - Math.abs(cell.latitudeDeg - middle) / lay.stepDeg;
      if (weight <= 0) continue;
      sum += weight * of(cell);
      total += weight;
    }
    return total > 0 ? sum / total : undefined;
  });
  const known = means.flatMap((mean, row) => (mean === undefined ? [] : [row]));
  return means.map(
    (mean, row) =>
      mean ??
      present(
        means[
          known.reduce(
            (best, at) => (Math.abs(at - row) < Math.abs(best - row) ? at : best),
            present(known[0]),
          )
        ],
      ),
  );
}

/** Between two rows of a table, in a straight line. */
function between(rows: readonly number[], latitudeDeg: number): number {
  const at = Math.min(lay.rows - 1, Math.max(0, (latitudeDeg - lay.southDeg) / lay.stepDeg));
  const row = Math.min(lay.rows - 2, Math.floor(at));
  const [low, high] = [present(rows[row]), present(rows[row + 1])];
  return low + (at - row) * (high - low);
}

/** The square root of the mean square of what is left beside the means. */
function spread(cells: readonly Cell[], of: (cell: Cell) => number): number[] {
  const means = byRow(cells, of);
  return byRow(cells, cell => (of(cell) - between(means, cell.latitudeDeg)) ** 2).map(Math.sqrt);
}

/** The table of latitudes: means over the square degrees where people live, each counted once. */
export function latitudesOf(cells: readonly Cell[]): Latitudes {
  const months = Array.from({ length: 12 }, (_, m) => m);
  const table = (quantum: number, rowsOf: (month: number) => number[]): number[][] => {
    const columns = months.map(rowsOf);
    return Array.from({ length: lay.rows }, (_, row) =>
      columns.map(column => Math.round(present(column[row]) / quantum)),
    );
  };
  const { quantum, quantumK } = fineness;
  const km = (cell: Cell): number => cell.heightM / 1000;
  const day = (m: number) => (cell: Cell) => present(cell.degrees[m]) - lapseKPerKm.day * km(cell);
  const night = (m: number) => (cell: Cell) => present(cell.degrees[12 + m]) - lapseKPerKm.night * km(cell);
  return {
    southDeg: lay.southDeg,
    stepDeg: lay.stepDeg,
    clearness: table(quantum, m => byRow(cells, cell => present(cell.clearness[m]))),
    clearnessSd: table(quantum, m => spread(cells, cell => present(cell.clearness[m]))),
    dayMax: table(quantumK, m => byRow(cells, cell => present(cell.degrees[m]))),
    nightMin: table(quantumK, m => byRow(cells, cell => present(cell.degrees[12 + m]))),
    temperatureSd: table(quantumK, m => {
      const [days, nights] = [spread(cells, day(m)), spread(cells, night(m))];
      return days.map((sd, row) => Math.sqrt((sd ** 2 + present(nights[row]) ** 2) / 2));
    }),
    heightM: byRow(cells, cell => cell.heightM).map(h => 10 * Math.round(h / 10)),
    ...fineness,
  };
}
