import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { type Bank, bankIn } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { restVoltsAt } from '#engine/battery/rest.ts';
import { chargeLeft } from '#engine/battery/rules.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Range } from '#quantity/range.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';
import type { RequestContext } from '../intent.ts';
import { levelByVolts, readBlocks, sagV, voltsStateOf } from '../level.ts';

export { chargeRow } from '#engine/battery/charge-table.ts';
export { blocksOf, isOnCharge } from '#engine/battery/rest.ts';

export interface ChargeLevel {
  readonly state: 'rest' | 'load' | 'charging' | 'told';
  readonly chemistry: Chemistry;
  readonly isChemistryAssumed: boolean;
  /** 12 V blocks in series that the volts are of. */
  readonly blocks: number;
  /** How full, %; none while a charger holds the volts up. */
  readonly stateOfCharge?: Range;
  /** What is left to use, Ah, where the capacity is known. */
  readonly leftAh?: Range;
  readonly capacityAh?: number;
  /** Rested volts at full and at half, of the whole battery, for comparison. */
  readonly fullV: number;
  readonly halfV: number;
  /** Volts that its chargers hold: while charging, from and to, and once it is full. */
  readonly chargeV: { readonly low: number; readonly high: number; readonly float: number };
  readonly assumptions: readonly Assumption[];
  readonly trace: Trace;
}

/** What can still be used (Ah) at a state of charge (%): down to the usual depth of its chemistry. */
function left(bank: Bank, level: Range, depthPercent: number | undefined, trace: Trace): Range {
  const [value, low, high] = chemistryRow(bank.chemistry).depth;
  const told = depthPercent === undefined ? undefined : depthPercent / 100;
  const at = (percent: number, DoD: number, t?: Trace) =>
    run(chargeLeft, { DoD: told ?? DoD, s: percent / 100, C: bank.capacityAh }, t);
  return { value: at(level.value, value, trace), low: at(level.low, low), high: at(level.high, high) };
}

/** How full a battery is by its volts, or what is left of it at the level told. */
export function computeChargeLevel(facts: Facts, setting: RequestContext): ChargeLevel {
  const told = facts.batteries?.find(b => b.chemistry !== undefined)?.chemistry;
  const chemistry = told ?? 'lead-acid';
  const bank = bankIn(facts);
  const blocks = readBlocks(facts, facts.volts ?? 12);
  const state =
    facts.volts === undefined ? 'told' : voltsStateOf(facts, chemistry, blocks, setting.parsed.cues);
  const trace = new Trace();
  const percent = facts.batteries?.find(b => b.stateOfChargePercent !== undefined)?.stateOfChargePercent;
  const stateOfCharge =
    state === 'charging'
      ? undefined
      : facts.volts === undefined
        ? { value: present(percent), low: present(percent), high: present(percent) }
        : levelByVolts(facts.volts, chemistry, blocks, state === 'load', trace);
  const assumptions: Assumption[] =
    state === 'load'
      ? [{ name: 'voltageSag', ...sagV, unit: 'V', why: 'a moderate load holds the volts down' }]
      : [];
  const { absorptionV, floatV } = chargeRow(chemistry);
  const [, lowV, highV] = absorptionV;
  return {
    state,
    chemistry,
    isChemistryAssumed: told === undefined,
    blocks,
    stateOfCharge,
    leftAh:
      bank && stateOfCharge ? left(bank, stateOfCharge, facts.depthOfDischargePercent, trace) : undefined,
    capacityAh: bank?.capacityAh,
    fullV: restVoltsAt(100, chemistry) * blocks,
    halfV: restVoltsAt(50, chemistry) * blocks,
    chargeV: { low: lowV * blocks, high: highV * blocks, float: floatV * blocks },
    assumptions,
    trace,
  };
}

/** The battery's size (Ah), a usual one where none is told. */
export const sizeAh = (facts: Facts): number => bankIn(facts)?.capacityAh ?? 100;
