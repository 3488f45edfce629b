import type { Facts } from '#rig/rig.ts';
import type { Sign } from './symptom.ts';

/** Rows of the catalogue that stand for a sign. */
const rowsOf: Readonly<Partial<Record<Sign, readonly string[]>>> = {
  cooler: ['fridge', 'freezer', 'cool box', 'medicine fridge'],
  lamp: ['light'],
  pump: ['water pump'],
  phone: ['phone', 'tablet'],
  heater: ['diesel heater', 'gas heater'],
  screen: ['tv', 'router', 'radio', 'laptop'],
};

/** From here on a mains load by itself is near what a site post gives, W. Common practice. */
const highMainsW = 1300;
/** A battery of this age may well be worn, years. Common practice. */
const oldYears = 5;
/** A 12 V battery under this has been run right down, V. */
const veryLowV = 10.5;
/** From here on a day is hot, °C. */
const hotC = 32;

/**
 * The signs that the facts show.
 * @param rowOf the name of a load's row in the catalogue
 */
export function signsIn(facts: Facts, rowOf: (name: string) => string | undefined): ReadonlySet<Sign> {
  const { loads = [], chargers = [], batteries = [], solar = [], volts, voltsTaken } = facts;
  const rows = new Set(loads.map(load => rowOf(load.name)));
  const kinds = new Set(chargers.map(({ kind }) => kind));
  const blocks = volts !== undefined && volts > 18 ? 2 : 1;
  const signs: readonly (readonly [sign: Sign, isThere: boolean])[] = [
    ...Object.entries(rowsOf).map(
      ([sign, names]) => [sign as Sign, names.some(name => rows.has(name))] as const,
    ),
    [
      'high-mains-load',
      facts.inverter === undefined && loads.some(l => l.supply === 'ac' && (l.powerW ?? 0) > highMainsW),
    ],
    ['fuse', facts.fuseA !== undefined],
    ['inverter', facts.inverter !== undefined],
    ['dcdc', kinds.has('dcdc')],
    ['isolator', kinds.has('isolator')],
    ['smart-alternator', facts.alternator === 'smart'],
    ['mains-charger', kinds.has('mains')],
    ['any-charger', kinds.size > 0],
    ['panel', solar.length > 0],
    ['two-panels', solar.length > 1],
    ['shade', facts.shade !== undefined && facts.shade !== 'none'],
    ['lithium', batteries.some(b => b.chemistry === 'lfp')],
    ['battery', batteries.length > 0],
    ['old-battery', batteries.some(b => (b.ageYears ?? 0) >= oldYears)],
    ['starter', batteries.some(b => b.role === 'starter')],
    ['volts', volts !== undefined],
    ['volts-very-low', volts !== undefined && volts / blocks < veryLowV && voltsTaken !== 'load'],
    ['volts-under-load', volts !== undefined && voltsTaken === 'load'],
    ['current', facts.netCurrentA !== undefined],
    ['hot-day', (facts.ambientC ?? 0) >= hotC],
  ];
  return new Set(signs.filter(([, isThere]) => isThere).map(([sign]) => sign));
}
