import type { Charger } from '#rig/rig.ts';
import type { Trace } from '#rule/trace.ts';
import { type Assumption, type NameTail, nameWith, type Values, type ValuesToSet } from '../assumption.ts';
import type { Bank } from '../battery/bank.ts';
import { chargeRow } from '../battery/charge-table.ts';
import { chemistryRow } from '../battery/tables.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '../charging/source.ts';

/** Driving of a trip, where it is the same every day, and what charges while driving. */
export interface TripDriving {
  readonly hoursPerDay?: number;
  /** What charges while driving; an isolator where nobody said. */
  readonly charger?: Charger;
  readonly alternator?: 'smart' | 'fixed';
}

/** What the battery is plugged into on some days: a charger of its own, on mains or on a generator. */
export interface TripPlug {
  /** The charger; a usual one where nobody said. */
  readonly charger?: Charger;
  /** Rating of the generator, W. */
  readonly generatorW?: number;
}

const blocksOf = (bank: Bank): number => bank.voltageV / chemistryRow(bank.chemistry).nominalV;

/** The charger behind the engine as the charging model takes it. */
const engineOf = (driving: TripDriving | undefined, bank: Bank): Source => ({
  ...(driving?.charger ?? { kind: 'isolator' }),
  alternator: driving?.alternator,
  row: chargeRow(bank.chemistry),
  blocks: blocksOf(bank),
});

/** A charger on mains or on a generator as the charging model takes it. */
const plugOf = (plug: TripPlug, bank: Bank): Source => ({
  kind: 'mains',
  currentA: plug.charger?.currentA,
  powerW: plug.charger?.powerW,
  generatorW: plug.generatorW,
  row: chargeRow(bank.chemistry),
  blocks: blocksOf(bank),
});

const plugged = ' plugged in';

/** What is taken for granted of the charger behind the engine. */
export const drivingAssumptions = (driving: TripDriving | undefined, bank: Bank): Assumption[] =>
  sourceAssumptions(engineOf(driving, bank));

/** What is taken for granted of the charger that is plugged in, under names of its own. */
export const plugAssumptions = (plug: TripPlug, bank: Bank): Assumption[] =>
  sourceAssumptions(plugOf(plug, bank)).map(a => ({ ...a, name: nameWith(a.name, plugged) }));

/** The current (A) on offer while driving. Assumptions without a value have their likely one. */
export function drivingA(
  driving: TripDriving | undefined,
  bank: Bank,
  values: Values,
  trace?: Trace,
): number {
  const source = engineOf(driving, bank);
  return sourceCurrentA(source, valuesFor(source, values, ''), trace);
}

/** The current (A) on offer while plugged in; on mains no generator holds it back. */
export function pluggedA(
  plug: TripPlug,
  bank: Bank,
  values: Values,
  { isOnMains = false, trace }: { readonly isOnMains?: boolean; readonly trace?: Trace } = {},
): number {
  const source = plugOf(isOnMains ? { charger: plug.charger } : plug, bank);
  return sourceCurrentA(source, valuesFor(source, values, plugged), trace);
}

/** The values of a source's assumptions, by their names with a tail; the likely ones where there are none. */
function valuesFor(source: Source, values: Values, tail: NameTail | ''): Values {
  const found: ValuesToSet = {};
  for (const { name, value } of sourceAssumptions(source))
    found[name] = values[nameWith(name, tail)] ?? value;
  return found;
}
