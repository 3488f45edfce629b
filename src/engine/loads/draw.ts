import { present } from '#basics/present.ts';
import type { Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { batteryPowerFor, inverterEfficiency, likelyInverterW } from '../inverter/efficiency.ts';
import { batterySideAboveA } from './duty.ts';
import { inputFactorOf, type ReadLoad, readLoads, type Use } from './reading.ts';
import { applianceInput, currentOfPower, powerOfCurrent } from './rules.ts';

/** Whether amps told of a load are those at the battery: on 12 V, and of a thing for mains where no socket gives so many. */
const isBatterySide = ({ supply, currentA = 0 }: ReadLoad['load']): boolean =>
  supply === 'dc' || currentA > batterySideAboveA;

/** Power (W) one of a load takes: as told, else typical; more than its plate where the plate shows what comes out. */
export function inputPowerW(reading: ReadLoad, use: Use, values: Values, trace?: Trace): number | undefined {
  const { load, key, row } = reading;
  if (load.powerW === undefined && load.currentA !== undefined) {
    const V = isBatterySide(load) ? use.voltageV : (use.mainsV ?? 230);
    return run(powerOfCurrent, { I: load.currentA, V }, trace);
  }
  const plateW = load.powerW ?? values[`${key} power`] ?? row?.powerW[1];
  const factor = inputFactorOf(load);
  if (plateW === undefined || !factor) return plateW;
  const f = values[`${key} input factor`] ?? factor[1];
  return run(applianceInput, { P_out: plateW, f }, trace);
}

/** The rating (W) of the inverter behind a mains load: as told, else a usual one that would start it. */
export function inverterBehind(reading: ReadLoad, use: Use, powerW: number): number {
  const { load, row } = reading;
  const startW = powerW * Math.max(1, (row?.surge ?? 1) / 2);
  return use.inverterW ?? likelyInverterW(Math.max(powerW * load.count, startW));
}

/** Current (A) a single one draws from the battery while it runs, an inverter's losses included. */
export function currentOf(reading: ReadLoad, use: Use, values: Values, trace?: Trace): number {
  const { load } = reading;
  if (load.currentA !== undefined && isBatterySide(load)) return load.currentA;
  const loadW = inputPowerW(reading, use, values, trace);
  if (loadW === undefined) return 0;
  if (load.supply === 'dc') return run(currentOfPower, { P: loadW, V: use.voltageV }, trace);
  const ratingW = inverterBehind(reading, use, loadW);
  const efficiency = values.inverterEfficiency ?? inverterEfficiency.value;
  const at = { loadW: loadW * load.count, ratingW, efficiency, idleShare: values.idleShare };
  const allW = batteryPowerFor(at, trace);
  return run(currentOfPower, { P: allW / load.count, V: use.voltageV }, trace);
}

/** As `currentOf`, for a load of `use.loads` or one by itself. */
export function runningCurrentA(load: Load, use: Use, values: Values, trace?: Trace): number {
  const at = use.loads.indexOf(load);
  const [reading] = at < 0 ? readLoads({ loads: [load] }) : readLoads(use).slice(at, at + 1);
  return currentOf(present(reading), use, values, trace);
}
