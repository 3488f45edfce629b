import type { Assumption, AssumptionName } from '../assumption.ts';
import { idleShare, inverterEfficiency } from '../inverter/efficiency.ts';
import { coolerAssumptions } from './cools.ts';
import { hasHours, inputFactorOf, isWhole, type ReadLoad, readLoads, runsOn, type Use } from './reading.ts';

const typical = (
  name: AssumptionName,
  range: readonly [number, number, number],
  unit: string,
  what: string,
): Assumption => ({ name, low: range[0], value: range[1], high: range[2], unit, why: `typical ${what}` });

/** What has to be taken for granted of one load. */
function ofLoad(reading: ReadLoad, use: Use): Assumption[] {
  const { load, key, row } = reading;
  const found: Assumption[] = [];
  if (isWhole(load)) return found;
  if (reading.cycles) found.push(...coolerAssumptions(reading, use));
  if (load.currentA === undefined && load.powerW === undefined && row)
    found.push(typical(`${key} power`, row.powerW, 'W', row.id));
  if (!hasHours(load) && row && !runsOn(reading, use))
    found.push(typical(`${key} hours a day`, row.hoursPerDay, 'h', row.id));
  const factor = inputFactorOf(load);
  if (factor && load.currentA === undefined) {
    const [low, value, high] = factor;
    const why = 'its plate is what it cooks with, it takes more';
    found.push({ name: `${key} input factor`, low, value, high, unit: '', why });
  }
  return found;
}

/** The air round a fridge where nobody said a place. Common practice. */
const mildAir: Assumption = {
  name: 'ambientC',
  value: 25,
  low: 17,
  high: 33,
  unit: '°C',
  why: 'mild camping weather',
};

/** What has to be taken for granted to know a day's use: duty cycles, hours and draws left out, inverter efficiency. */
export function useAssumptions(use: Use): Assumption[] {
  const found = toldAssumptions(use);
  return use.learnedDraw ? [...found, use.learnedDraw] : found;
}

function toldAssumptions(use: Use): Assumption[] {
  if (use.dailyUseAh !== undefined || use.dailyUseWh !== undefined) return [];
  const readings = readLoads(use);
  const found = readings.flatMap(reading => ofLoad(reading, use));
  const isInverting = use.loads.some(load => load.supply === 'ac' && !isWhole(load));
  if (isInverting) found.push(inverterEfficiency);
  if (isInverting || use.isInverterLeftOn) found.push(idleShare);
  if (use.ambientC === undefined && readings.some(r => r.cycles)) found.push(use.air ?? mildAir);
  return found;
}
