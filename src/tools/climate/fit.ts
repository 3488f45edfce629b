import { outsideRadiationOf } from '../../engine/solar/sun.ts';
import { encode } from './encode.ts';
import { hazeRatio } from './haze.ts';
import { inhabited, latitudesOf } from './latitudes.ts';
import { lowRank } from './low-rank.ts';
import type { Town } from './measure.ts';
import type { Reference, Table } from './reference.ts';

/** How fine the model is: patterns kept, and the step of what is stored of each. */
const fineness = {
  clearness: { rank: 8, quantum: 0.02 },
  temperature: { rank: 8, quantum: 0.5 },
  heightQuantumM: 50,
} as const;
/** Less sun than this outside the air, kWh/m², and the ratio of what arrives to it says nothing. */
const leastOutside = 0.3;
/** The clearest month of the clearest place. */
const brightest = 0.85;
/** Over sea nobody camps: its cells are kept, and count little in choosing the patterns. */
const seaWeight = 0.1;

const latitudeOf = ({ southDeg, stepDeg, cols }: Omit<Table, 'cells'>, cell: number): number =>
  southDeg + stepDeg * Math.floor(cell / cols);
const longitudeOf = ({ westDeg, stepDeg, cols }: Omit<Table, 'cells'>, cell: number): number =>
  westDeg + stepDeg * (cell % cols);

/** Sun as clearness, haze counted in; months of polar night take the mean of the others. */
function clearnessTable(sun: Table): Table {
  const cells = sun.cells.map((row, cell) => {
    const [latitude, longitude] = [latitudeOf(sun, cell), longitudeOf(sun, cell)];
    const ratios = row.map((ghi, m) => {
      const outside = outsideRadiationOf(latitude, m + 1);
      if (outside < leastOutside) return undefined;
      return Math.min(brightest, (ghi * hazeRatio(latitude, longitude, m)) / outside);
    });
    const lit = ratios.filter(ratio => ratio !== undefined);
    const mean = lit.reduce((a, b) => a + b, 0) / lit.length;
    return ratios.map(ratio => ratio ?? mean);
  });
  return { ...sun, cells };
}

/** The file of the model that is fitted to a reference; towns tell where people live. */
export function fitClimate(reference: Reference, towns: readonly Town[]): Buffer {
  const { sun, temperature, heightM } = reference;
  const width = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
  const ratios = clearnessTable(sun);
  const clearness = lowRank(ratios, {
    ...fineness.clearness,
    weigh: cell => width(latitudeOf(sun, cell)) * (heightM[cell] === undefined ? seaWeight : 1),
  });
  const degrees = lowRank(temperature, {
    ...fineness.temperature,
    weigh: cell => width(latitudeOf(temperature, cell)),
  });
  const { cells: _, ...lay } = sun;
  const quantumM = fineness.heightQuantumM;
  const steps = Int16Array.from(heightM, h => (h === undefined ? -1 : Math.round(h / quantumM)));
  return encode(
    {
      clearness: clearness.patterns,
      temperature: degrees.patterns,
      height: { ...lay, quantumM },
      latitudes: latitudesOf(inhabited(reference, ratios, towns)),
    },
    { clearness: clearness.planes, temperature: degrees.planes, height: steps },
  );
}
