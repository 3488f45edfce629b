import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { type Bank, bankIn } from '#engine/battery/bank.ts';
import { blocksOf, chargeAtRest, isOnCharge } from '#engine/battery/rest.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Range } from '#quantity/range.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Trace } from '#rule/trace.ts';

/** How far a moderate load holds a 12 V block's volts down, V; common practice. */
export const sagV = { value: 0.15, low: 0.05, high: 0.4 } as const;

/** Volts of a 12 V battery that a charger hardly goes below, common practice. */
const leastChargingV = 12.6;

/** The level (%) that a battery should not go below: as told, else as is usual for its kind. */
export const floorPercentOf = ({ depthOfDischargePercent }: Facts, chemistry: Chemistry): number =>
  100 - (depthOfDischargePercent ?? 100 * chemistryRow(chemistry).depth[0]);

/** What a battery was doing while its volts were read. */
export type VoltsState = 'rest' | 'load' | 'charging';

const blocksIn = (nominalV: number): number => Math.max(0.5, Math.round(nominalV / 6) / 2);

/** What of a rig tells the volts that are read off it. */
type Wired = Pick<Facts, 'batteries' | 'arrangement' | 'systemVoltageV'>;

/**
 * How many 12 V blocks in series the volts read are of: the system's or those of all batteries together, or of one of
 * them, whichever the reading is near; by the reading alone where no volts were told.
 */
export function readBlocks(facts: Wired, volts: number): number {
  const oneV = facts.batteries?.find(b => b.voltageV !== undefined)?.voltageV;
  if ((facts.systemVoltageV ?? oneV) === undefined) return blocksOf(volts);
  const told = [facts.systemVoltageV, bankIn(facts)?.voltageV, oneV]
    .filter(nominalV => nominalV !== undefined)
    .map(blocksIn);
  return told.find(blocks => blocks === blocksOf(volts)) ?? present(told[0]);
}

/** In what state volts were read, by what was said and by the volts themselves. */
export function voltsStateOf(
  { volts = 0, voltsTaken }: Facts,
  chemistry: Chemistry,
  blocks: number,
  cues: { has(cue: Cue): boolean },
): VoltsState {
  const isRest = voltsTaken === 'rest' || cues.has('rest-reading');
  if (isOnCharge(volts, chemistry, blocks)) return 'charging';
  // Below its volts at rest when full nothing shows a charger's volts, whatever was said: common practice.
  const isChargerLike = volts / blocks >= leastChargingV;
  if (isChargerLike && (voltsTaken === 'charging' || (cues.has('on-charge') && !isRest))) return 'charging';
  return voltsTaken === 'load' || (cues.has('under-load') && !isRest) ? 'load' : 'rest';
}

/** How full (%) by the volts, in the state they were read in: from rested tables, with the sag of a load put back. */
export function levelByVolts(
  volts: number,
  chemistry: Chemistry,
  blocks: number,
  isLoaded: boolean,
  trace?: Trace,
): Range {
  if (!isLoaded) return chargeAtRest(volts, chemistry, trace, blocks);
  const at = (sag: number, t?: Trace) => chargeAtRest(volts + sag * blocks, chemistry, t, blocks);
  return { value: at(sagV.value, trace).value, low: at(sagV.low).low, high: at(sagV.high).high };
}

/** How full a bank is by volts that were read (%), where its level wasn't told; undefined where they don't tell. */
export function levelRead(
  facts: Facts,
  bank: Pick<Bank, 'chemistry'>,
  cues: { has(cue: Cue): boolean },
): Assumption | undefined {
  const { volts } = facts;
  if (volts === undefined || facts.batteries?.some(b => b.stateOfChargePercent !== undefined))
    return undefined;
  const blocks = readBlocks(facts, volts);
  const state = voltsStateOf(facts, bank.chemistry, blocks, cues);
  if (state === 'charging') return undefined;
  const range = levelByVolts(volts, bank.chemistry, blocks, state === 'load');
  const why = `by its ${volts} V ${state === 'load' ? 'under load' : 'at rest'}`;
  return { name: 'stateOfCharge', ...range, unit: '%', why };
}
