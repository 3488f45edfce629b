import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { blocksOf, chargeAtRest, isOnCharge, restVoltsAt } from '#engine/battery/rest.ts';
import { chargeLeft } from '#engine/battery/rules.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Assumption, Range } from '#quantity/range.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';
import type { Setting } from '../intent.ts';

/** How far a moderate load holds a 12 V block's volts down, V; common practice. */
const sagV = { value: 0.15, low: 0.05, high: 0.4 } as const;

export interface ChargeLevel {
  readonly state: 'rest' | 'load' | 'charging' | 'told';
  readonly chemistry: Chemistry;
  readonly isChemistryAssumed: boolean;
  /** How full, %; none while a charger holds the volts up. */
  readonly stateOfCharge?: Range;
  /** What is left to use, Ah, where the capacity is known. */
  readonly leftAh?: Range;
  readonly capacityAh?: number;
  /** Rested volts at full and at half, of the whole battery, for comparison. */
  readonly fullV: number;
  readonly halfV: number;
  readonly assumptions: readonly Assumption[];
  readonly trace: Trace;
}

/** Volts of a 12 V battery that a charger hardly goes below, common practice. */
const leastChargingV = 12.6;

function stateOf(facts: Facts, chemistry: Chemistry, blocks: number, setting: Setting): ChargeLevel['state'] {
  if (facts.volts === undefined) return 'told';
  const { cues } = setting.parsed;
  const isRest = facts.voltsTaken === 'rest' || cues.has('rest-reading');
  if (isOnCharge(facts.volts, chemistry, blocks)) return 'charging';
  // Below its volts at rest when full nothing shows a charger's volts, whatever was said: common practice.
  const isChargerLike = facts.volts / blocks >= leastChargingV;
  if (isChargerLike && (facts.voltsTaken === 'charging' || (cues.has('on-charge') && !isRest)))
    return 'charging';
  if (facts.voltsTaken === 'load' || (cues.has('under-load') && !isRest)) return 'load';
  return 'rest';
}

/** How full (%) by the volts, in the state they were read in: from rested tables, with the sag of a load put back. */
function levelByVolts(
  volts: number,
  chemistry: Chemistry,
  blocks: number,
  isLoaded: boolean,
  trace: Trace,
): Range {
  if (!isLoaded) return chargeAtRest(volts, chemistry, trace, blocks);
  const at = (sag: number, t?: Trace) => chargeAtRest(volts + sag * blocks, chemistry, t, blocks);
  return { value: at(sagV.value, trace).value, low: at(sagV.low).low, high: at(sagV.high).high };
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
export function computeChargeLevel(facts: Facts, setting: Setting): ChargeLevel {
  const told = facts.batteries?.find(b => b.chemistry !== undefined)?.chemistry;
  const chemistry = told ?? 'lead-acid';
  const bank = bankOf(facts.batteries ?? [], facts.arrangement, facts.systemVoltageV);
  const one = facts.batteries?.find(b => b.voltageV !== undefined)?.voltageV;
  const systemV = facts.systemVoltageV ?? one;
  const blocks =
    systemV === undefined ? blocksOf(facts.volts ?? 12) : Math.max(0.5, Math.round(systemV / 6) / 2);
  const state = stateOf(facts, chemistry, blocks, setting);
  const trace = new Trace();
  const percent = facts.batteries?.find(b => b.stateOfChargePercent !== undefined)?.stateOfChargePercent;
  const stateOfCharge =
    state === 'charging'
      ? undefined
      : facts.volts === undefined
        ? { value: percent!, low: percent!, high: percent! }
        : levelByVolts(facts.volts, chemistry, blocks, state === 'load', trace);
  const assumptions: Assumption[] =
    state === 'load'
      ? [{ name: 'voltageSag', ...sagV, unit: 'V', why: 'a moderate load holds the volts down' }]
      : [];
  return {
    state,
    chemistry,
    isChemistryAssumed: told === undefined,
    stateOfCharge,
    leftAh:
      bank && stateOfCharge ? left(bank, stateOfCharge, facts.depthOfDischargePercent, trace) : undefined,
    capacityAh: bank?.capacityAh,
    fullV: restVoltsAt(100, chemistry) * blocks,
    halfV: restVoltsAt(50, chemistry) * blocks,
    assumptions,
    trace,
  };
}
