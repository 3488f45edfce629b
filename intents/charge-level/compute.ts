import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { restVoltsAt } from '#engine/battery/rest.ts';
import { chargeLeft } from '#engine/battery/rules.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Explored } from '#engine/explore.ts';
import { exploreLater, type LaterKey } from '#engine/trip/later.ts';
import type { Assumption, Range } from '#quantity/range.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';
import { batteryAir } from '../battery-air.ts';
import type { Setting } from '../intent.ts';
import { levelByVolts, readBlocks, sagV, voltsStateOf } from '../level.ts';
import { hasUse, useOf } from '../use.ts';

/** In a time as short as this (h) whatever has no hours of its own is on throughout. */
const shortH = 12;

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
  /** At the time asked about, where that and what goes out or in was told. */
  readonly later?: Explored<LaterKey> & { readonly hours: number; readonly restV: number };
}

/** What can still be used (Ah) at a state of charge (%): down to the usual depth of its chemistry. */
function left(bank: Bank, level: Range, depthPercent: number | undefined, trace: Trace): Range {
  const [value, low, high] = chemistryRow(bank.chemistry).depth;
  const told = depthPercent === undefined ? undefined : depthPercent / 100;
  const at = (percent: number, DoD: number, t?: Trace) =>
    run(chargeLeft, { DoD: told ?? DoD, s: percent / 100, C: bank.capacityAh }, t);
  return { value: at(level.value, value, trace), low: at(level.low, low), high: at(level.high, high) };
}

/** How full it will be at the time asked about: by what runs on it, or what a monitor shows going in. */
function laterOf(
  facts: Facts,
  bank: Bank,
  now: Range,
  { at, mainsV, parsed }: Setting,
): (Explored<LaterKey> & { readonly hours: number }) | undefined {
  const { durationH: hours, netCurrentA: intoA = 0 } = facts;
  if (hours === undefined || !(intoA > 0 || hasUse(facts))) return undefined;
  const explored = exploreLater({
    bank,
    level: { name: 'stateOfCharge', ...now, unit: '%', why: 'by the volts read' },
    hours,
    use: {
      ...useOf(facts, bank.voltageV, mainsV, at),
      doesMainsRunOn: true,
      doAllRunOn: hours <= shortH,
    },
    intoA,
    temperatureC: facts.ambientC,
    temperature: batteryAir(facts, at, parsed.recognised.words),
  });
  return { ...explored, hours };
}

/** How full a battery is by its volts, or what is left of it at the level told. */
export function computeChargeLevel(facts: Facts, setting: Setting): ChargeLevel {
  const told = facts.batteries?.find(b => b.chemistry !== undefined)?.chemistry;
  const chemistry = told ?? 'lead-acid';
  const bank = bankOf(facts.batteries ?? [], facts.arrangement, facts.systemVoltageV);
  const blocks = readBlocks(facts);
  const state =
    facts.volts === undefined ? 'told' : voltsStateOf(facts, chemistry, blocks, setting.parsed.cues);
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
  const later = bank && stateOfCharge && laterOf(facts, bank, stateOfCharge, setting);
  return {
    state,
    ...(later && {
      later: { ...later, restV: restVoltsAt(later.figures.levelThen.value, chemistry) * blocks },
    }),
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
