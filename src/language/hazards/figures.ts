import type { Mention } from './concepts.ts';
import {
  alikeSizes,
  ampacityA,
  batteryCurrentA,
  lighterSocketA,
  starterShare,
  trailerPinA,
  usualStarterAh,
} from './limits.ts';
import { type Quantity, quantitiesOf, type Unit } from './quantities.ts';
import type { Word } from './words.ts';

const near = (mentions: readonly Mention[], concept: string, at: number, reach: number): boolean =>
  mentions.some(m => m.concept === concept && Math.abs(m.at - at) <= reach);

/** Ratings that fuses are made in, A; ISO 8820 and makers' common data. */
const fuseRatingsA: ReadonlySet<number> = new Set([
  3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 175, 200, 250, 300,
]);

const areasOf = (all: readonly Quantity[]): number[] =>
  all.filter(q => q.unit === 'mm2' && q.value >= 0.5 && q.value <= 120).map(q => q.value);

/** The number of a unit nearest to a concept, at most `reach` words away. */
function nearest(
  all: readonly Quantity[],
  unit: Unit,
  mentions: readonly Mention[],
  concept: string,
  reach: number,
): number | undefined {
  let best: { value: number; far: number } | undefined;
  for (const q of all)
    if (q.unit === unit)
      for (const m of mentions)
        if (m.concept === concept) {
          // What follows a name belongs to it rather than what stands before.
          const far = q.at >= m.at ? q.at - m.at : m.at - q.at + 0.5;
          if (far <= reach && (!best || far < best.far)) best = { value: q.value, far };
        }
  return best?.value;
}

/** Units that a bare number has by what stands beside it: "gel 100", "max 25", "hob 1800". */
function named(all: readonly Quantity[], mentions: readonly Mention[]): readonly Quantity[] {
  return all.map(q => {
    // A monitor's "-3" is a current, whatever the weather.
    if (q.unit === 'C' && q.isBare && mentions.some(m => m.concept === 'monitor'))
      return { ...q, unit: 'A' as const };
    if (q.unit !== undefined) return q;
    const beside = (concept: string): boolean => near(mentions, concept, q.at, 1);
    if (
      q.value >= 20 &&
      q.value <= 400 &&
      (beside('lithium') || beside('lead-acid') || near(mentions, 'parallel', q.at, 5))
    )
      return { ...q, unit: 'Ah' as const };
    if (q.value >= 300 && q.value <= 6000 && (beside('inverter') || beside('big-load')))
      return { ...q, unit: 'W' as const };
    if (q.value > 10 && q.value < 13 && !Number.isInteger(q.value)) return { ...q, unit: 'V' as const };
    if (q.value >= 5 && q.value <= 300 && (beside('limit') || beside('bms')))
      return { ...q, unit: 'A' as const };
    return q;
  });
}

const perDay = /^(?:a|an|per|each|daily|used|gone|left|day|night|out|to|in|remaining|consumed)$/;

/**
 * What the numbers of a message mean for its dangers, as concepts: below zero, over or under a limit, two unlike
 * capacities, much out of a starter battery.
 */
export function figureConcepts(words: readonly Word[], mentions: readonly Mention[]): readonly string[] {
  const all = named(quantitiesOf(words), mentions);
  if (all.length === 0) return [];
  const found: string[] = [];
  const of = (unit: Unit): number[] => all.filter(q => q.unit === unit).map(q => q.value);
  const has = (concept: string): boolean => mentions.some(m => m.concept === concept);
  const temperatures = of('C');
  if (temperatures.some(c => c <= 0)) found.push('#below-zero');
  if (temperatures.some(c => c > 0 && c <= 5)) found.push('#near-zero');
  if (temperatures.some(c => c > 5)) found.push('#mild');

  const capacityQs = all.filter(
    q => q.unit === 'Ah' && q.value >= 20 && !perDay.test(words[q.end]?.text ?? ''),
  );
  const capacities = capacityQs.map(q => q.value);
  const [least, most] = [Math.min(...capacities), Math.max(...capacities)];
  if (capacities.length > 1 && most > alikeSizes * least) found.push('#two-capacities');
  if (['agm', 'gel', 'flooded', 'lithium'].filter(has).length > 1) found.push('#two-kinds');

  if (of('year').some(years => years >= 2 && years <= 15)) found.push('#years');
  const alternatorA = nearest(all, 'A', mentions, 'alternator', 5);
  if (alternatorA !== undefined && most >= 1.9 * alternatorA) found.push('#bank-over-alternator');
  const powers = of('W');
  const currents = of('A');
  if (currents.length > 0) found.push('#amps');
  if (new Set(currents).size > 1) found.push('#two-currents');
  const ratings = new Set(
    all.filter(q => (q.unit === 'A' || q.unit === undefined) && fuseRatingsA.has(q.value)).map(q => q.value),
  );
  if (ratings.size > 1) found.push('#two-ratings');
  if (powers.some(w => w >= 1500)) found.push('#big-load');
  const judge = (currentA: number | undefined, limitA: number | undefined, name: string): void => {
    if (currentA !== undefined && limitA !== undefined && currentA > 0)
      found.push(currentA > limitA ? `#over-${name}` : `#under-${name}`);
  };
  const voltageV = of('V').includes(24) && !of('V').includes(12) ? 25.6 : 12.8;
  const isBattery = has('bms') || has('battery') || has('lithium') || has('lead-acid');
  const capA =
    nearest(all, 'A', mentions, 'bms', 7) ??
    (isBattery || has('big-load')
      ? (nearest(all, 'A', mentions, 'limit', 6) ?? nearest(all, 'A', mentions, 'limit-word', 4))
      : undefined);
  if (capA !== undefined) {
    const bmsA = has('parallel') && has('each') ? 2 * capA : capA;
    const loads = all.filter(q => q.unit === 'W' && !near(mentions, 'inverter', q.at, 1)).map(q => q.value);
    const powerW =
      loads.length > 0 ? Math.max(...loads) : powers.length > 0 ? Math.max(...powers) : undefined;
    const others = currents.filter(a => a !== capA);
    judge(powerW === undefined ? undefined : batteryCurrentA(powerW, voltageV), bmsA, 'limit');
    if (others.length > 0 && has('charge')) judge(Math.max(...others), bmsA, 'charge-limit');
  }
  const fuseA = nearest(all, 'A', mentions, 'fuse', 4);
  const areas = areasOf(all);
  if (areas.some(mm2 => mm2 <= 1.5)) found.push('#thin');
  if (areas.length > 0 && !has('alternator') && !has('claims')) {
    const fed = has('inverter') && powers.length > 0 ? batteryCurrentA(Math.max(...powers)) : undefined;
    const asked = currents.filter(a => a !== fuseA);
    judge(
      asked.length > 0 ? Math.max(...asked) : (fed ?? (fuseA === undefined ? undefined : fuseA / 1.4)),
      ampacityA(Math.max(...areas)),
      'cable',
    );
  }
  if (has('ciggy') || has('small-plug')) {
    const socketA = has('ciggy') ? (fuseA ?? lighterSocketA) : trailerPinA;
    const loads = [
      ...powers.map(w => (has('inverter') ? batteryCurrentA(w) : w / 12)),
      ...currents.filter(a => a !== socketA),
    ];
    if (loads.length > 0) judge(Math.max(...loads), socketA, 'socket');
  } else if (fuseA !== undefined && currents.length > 1 && !has('claims'))
    judge(Math.max(...currents.filter(a => a !== fuseA), 0), fuseA, 'fuse');
  const supplyA = has('supply') ? nearest(all, 'A', mentions, 'supply', 4) : undefined;
  if (supplyA !== undefined && powers.length > 0)
    judge(powers.reduce((a, b) => a + b, 0) / 230, supplyA, 'supply');
  if (has('starter')) {
    const hours = Math.max(0, ...of('h'));
    const drawA = Math.max(0, ...currents, ...powers.map(w => w / 12));
    if (hours > 0 && drawA > 0)
      judge((drawA * hours) / (capacities.length > 0 ? least : usualStarterAh), starterShare, 'starter');
  }
  const volts = of('V');
  if (volts.some(v => v > 9 && v < 12.05 && v !== 12 && v !== 10 && v !== 11)) found.push('#low-volts');
  if (volts.includes(24) && volts.includes(12)) found.push('#two-voltages');
  return [...new Set(found)];
}
