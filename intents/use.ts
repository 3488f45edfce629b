import { sentence } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { coolingReading, hasHours, isDrawTold, isWhole, type Use } from '#engine/loads/reading.ts';
import { airAboutFridge } from '#engine/solar/air.ts';
import type { Assumption } from '#quantity/range.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { whereOf } from './sun.ts';

/** The air about a fridge where they camp, where nobody told it and the place is known. @param at where no month was said, the message's */
function airOf(facts: Facts, at?: Date): Assumption | undefined {
  const isPlaced = facts.place !== undefined || facts.latitudeDeg !== undefined;
  if (!isPlaced || facts.ambientC !== undefined) return undefined;
  const where = whereOf(facts);
  if (where.latitudeDeg === undefined) return undefined;
  return airAboutFridge({ ...where, month: facts.month ?? (at && at.getUTCMonth() + 1) });
}

/**
 * What the facts say of a day's use, for the engine, at a nominal battery voltage (V).
 * @param at time of the message, for the month where none was said
 */
export const useOf = (facts: Facts, voltageV: number, mainsV?: number, at?: Date): Use => ({
  loads: facts.loads ?? [],
  dailyUseAh: facts.dailyUseAh,
  dailyUseWh: facts.dailyUseWh,
  voltageV,
  ambientC: facts.ambientC,
  air: airOf(facts, at),
  inverterW: facts.inverter?.powerW,
  mainsV,
});

const draw = (load: Load, { significant }: Speech): string =>
  load.currentA === undefined ? `${significant(load.powerW!)} W` : `${significant(load.currentA)} A`;

/**
 * Says how the draw of a thing that cools was taken, where it could be either, and offers the other:
 * undefined where the person left no doubt.
 */
export function readingNote(facts: Facts, words: Speech = english): string | undefined {
  const load = facts.loads?.find(l => coolingReading(l) === 'running');
  if (!load) return undefined;
  const share = (applianceOf(load.name)?.setPointC ?? 0) < -5 ? '45' : '35';
  const [thing, drawn] = [sentence(load.name), draw(load, words)];
  return words.say(
    'reading-note',
    '{thing} {drawn} is taken as what it draws while running, some {share} % of the time at 25 °C; if that is its average, say “average”.',
    { thing, drawn, share },
  );
}

/** Whether it takes anything that is known: a thing of no known kind needs its draw told, and "lights 0 h" takes none. */
const drains = (load: Load): boolean =>
  (isDrawTold(load) || isWhole(load) || applianceOf(load.name) !== undefined) &&
  load.dutyPercent !== 0 &&
  load.hoursPerDay !== 0 &&
  load.minutesPerDay !== 0;

/** Whether each load has its hours. */
export const areTimed = ({ loads }: Facts): boolean => !!loads?.length && loads.every(hasHours);

/** Whether something that drains the battery is told. */
export const hasUse = (facts: Facts): boolean =>
  !!facts.loads?.some(drains) || facts.dailyUseAh !== undefined || facts.dailyUseWh !== undefined;
