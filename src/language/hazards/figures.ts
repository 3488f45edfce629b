import type { Mention } from './concepts.ts';
import { ampacityA, batteryCurrentA, lighterSocketA, starterShare, trailerPinA } from './limits.ts';
import { type Quantity, quantitiesOf, type Unit } from './quantities.ts';
import type { Word } from './words.ts';

const near = (mentions: readonly Mention[], concept: string, at: number, reach: number): boolean =>
  mentions.some(m => m.concept === concept && Math.abs(m.at - at) <= reach);

const areasOf = (all: readonly Quantity[]): number[] =>
  all.filter(q => q.unit === 'mm2' && q.value >= 0.5 && q.value <= 120).map(q => q.value);

/** The number of a unit nearest to a concept, at most `reach` words away. */
function nearest(all: readonly Quantity[], unit: Unit, mentions: readonly Mention[], concept: string, reach: number): number | undefined {
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

/**
 * What the numbers of a message mean for its dangers, as concepts: below zero, over or under a limit, two unlike
 * capacities, much out of a starter battery.
 */
export function figureConcepts(words: readonly Word[], mentions: readonly Mention[]): readonly string[] {
  const all = quantitiesOf(words);
  if (all.length === 0) return [];
  const found: string[] = [];
  const of = (unit: Unit): number[] => all.filter(q => q.unit === unit).map(q => q.value);
  const has = (concept: string): boolean => mentions.some(m => m.concept === concept);
  const temperatures = of('C');
  if (temperatures.some(c => c <= 0)) found.push('#below-zero');
  if (temperatures.some(c => c > 0 && c <= 5)) found.push('#near-zero');
  if (temperatures.some(c => c > 5)) found.push('#mild');

  const isNamed = (q: Quantity): boolean => q.unit === undefined && (near(mentions, 'lead-acid', q.at, 1) || near(mentions, 'lithium', q.at, 1) || (has('parallel') && q.value <= 400));
  const capacities = new Set(all.filter(q => q.value >= 20 && (q.unit === 'Ah' || isNamed(q))).map(q => q.value));
  if (capacities.size > 1) found.push('#two-capacities');
  const powers = of('W');
  const currents = of('A');
  const judge = (currentA: number | undefined, limitA: number | undefined, name: string): void => {
    if (currentA !== undefined && limitA !== undefined) found.push(currentA > limitA ? `#over-${name}` : `#under-${name}`);
  };
  const bmsA = nearest(all, 'A', mentions, 'bms', 7) ?? nearest(all, 'A', mentions, 'limit', 6);
  if (bmsA !== undefined) {
    const loads = all.filter(q => q.unit === 'W' && !near(mentions, 'inverter', q.at, 1)).map(q => q.value);
    const powerW = loads.length > 0 ? Math.max(...loads) : powers.length > 0 ? Math.max(...powers) : undefined;
    const others = currents.filter(a => a !== bmsA);
    judge(powerW === undefined ? undefined : batteryCurrentA(powerW), bmsA, 'limit');
    if (others.length > 0) judge(Math.max(...others), bmsA, 'charge-limit');
  }
  const areas = areasOf(all);
  if (areas.length > 0 && (currents.length > 0 || powers.length > 0)) {
    const areaMm2 = Math.max(...areas);
    const fed = has('inverter') ? powers : [];
    judge(currents.length > 0 ? Math.max(...currents) : fed.length > 0 ? batteryCurrentA(Math.max(...fed)) : undefined, ampacityA(areaMm2), 'cable');
  }
  const socketA = has('ciggy') ? (nearest(all, 'A', mentions, 'fuse', 4) ?? lighterSocketA) : has('small-plug') ? trailerPinA : undefined;
  if (socketA !== undefined) {
    const loads = [...powers.map(w => (has('inverter') ? batteryCurrentA(w) : w / 12)), ...currents.filter(a => a !== socketA)];
    if (loads.length > 0) judge(Math.max(...loads), socketA, 'socket');
  } else if (has('fuse') && currents.length > 1) {
    const fuseA = nearest(all, 'A', mentions, 'fuse', 4);
    if (fuseA !== undefined) judge(Math.max(...currents.filter(a => a !== fuseA), 0), fuseA, 'fuse');
  }
  if (has('starter')) {
    const capacityAh = capacities.size > 0 ? Math.min(...capacities) : undefined;
    const hours = Math.max(0, ...of('h'));
    const drawA = Math.max(0, ...currents, ...powers.map(w => w / 12));
    if (capacityAh !== undefined && hours > 0 && drawA > 0) judge((drawA * hours) / capacityAh, starterShare, 'starter');
  }
  if (new Set(currents).size > 1) found.push('#two-currents');
  if (powers.some(w => w >= 1500)) found.push('#big-load');
  if (areasOf(all).some(mm2 => mm2 <= 1.5)) found.push('#thin');
  if (capacities.size > 0 && Math.max(...capacities) >= 200) found.push('#big-bank');
  const volts = of('V');
  if (volts.some(v => v > 9 && v < 12.05)) found.push('#low-volts');
  if (volts.includes(24) && volts.includes(12)) found.push('#two-voltages');
  return [...new Set(found)];
}
