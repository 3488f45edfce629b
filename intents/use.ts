import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Assumption } from '#engine/assumption.ts';
import { builtAs } from '#engine/loads/build.ts';
import { dutyAt, usualCooler } from '#engine/loads/cooler.ts';
import {
  coolingReading,
  hasHours,
  isDrawTold,
  isPerhapsThreeWay,
  isThreeWay,
  isWhole,
  runningHours,
  type Use,
} from '#engine/loads/reading.ts';
import { airAboutFridge } from '#engine/solar/air.ts';
import { decimals } from '#quantity/round.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { learnedAssumption } from './learned.ts';
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
  learnedDraw: learnedAssumption('learnedDraw', facts),
  inverterW: facts.inverter?.powerW,
  isInverterLeftOn: facts.inverter?.isLeftOn,
  mainsV,
});

const draw = (load: Load, { significant }: Speech): string =>
  load.currentA === undefined ? `${significant(present(load.powerW))} W` : `${significant(load.currentA)} A`;

/** Whether the draw told of a thing that cools may be its average or what it draws while it runs. */
export const isEitherDraw = (load: Load): boolean =>
  coolingReading(load) === 'running' || coolingReading(load) === 'average';

/** What a three-way fridge does to a battery, where one is told or one of the loads may be such: undefined where none draws so much. */
function threeWayNote(facts: Facts, words: Speech): string | undefined {
  if (facts.loads?.some(isThreeWay))
    return words.say(
      'three-way-told',
      'A three-way (absorption) fridge heats all the time on 12 V, no thermostat saves any: that is for the drive. Parked it goes on gas, vented outside, by its maker’s and local rules.',
    );
  const load = facts.loads?.find(l => isPerhapsThreeWay(l, facts.systemVoltageV ?? 12));
  if (!load) return undefined;
  const parked =
    'parked it flattens the battery: there it goes on gas, vented outside, by its maker’s and local rules.';
  if (coolingReading(load) !== 'running')
    return words.say(
      'three-way',
      `If that is a three-way (absorption) fridge, 12 V is for the drive; ${parked}`,
    );
  return words.say(
    'three-way-or',
    `If it is a three-way (absorption) fridge it draws that all the time, so that is its average; 12 V is for the drive; ${parked}`,
  );
}

/** Says that the amps of a thing that cools count as its average, and from where on they don't. */
function averageNote({ loads }: Facts, words: Speech): string | undefined {
  const load = loads?.find(l => coolingReading(l) === 'average');
  return (
    load &&
    words.say(
      'average-note',
      'I took {drawn} as the {thing}’s average. If it only draws that while running, say “{thing} runs 40 % of the time”.',
      { drawn: draw(load, words), thing: load.name },
    )
  );
}

/** Boxes that may well have no compressor, by what they are called. */
const isPerhapsThermo = ({ name, build, dutyPercent, isAverage }: Load): boolean =>
  /^(?:12 ?v |electric |plug-in )?cool ?(?:box|bag)/i.test(name) &&
  build === undefined &&
  dutyPercent === undefined &&
  isAverage !== true;

/** What a coolbox without a compressor draws, W. Makers' sheets that agree. */
const thermoW = 45;

/** Says that a coolbox was taken for one with a compressor, and what one without takes. */
function coolboxNote({ loads }: Facts, usableAh: number | undefined, words: Speech): string | undefined {
  const load = loads?.find(isPerhapsThermo);
  if (!load || loads?.length !== 1 || coolingReading(load) === 'hours') return undefined;
  const amps = load.currentA ?? (load.powerW ?? thermoW) / 12;
  const hours = usableAh === undefined ? undefined : usableAh / amps;
  return words.say(
    'coolbox-note',
    'I took one with a compressor, on about a third of the time. A plug-in (thermoelectric) one never stops: about {ah} Ah a day{lasts}.',
    {
      ah: words.plain(24 * amps * load.count),
      lasts:
        hours === undefined
          ? ''
          : words.say('coolbox-lasts', ', so {hours} hours', { hours: words.plain(hours / load.count) }),
    },
  );
}

/**
 * Says how the draw of a thing that cools was taken, where it could be either, and offers the other; and what bears
 * on a three-way fridge. Undefined where the person left no doubt.
 */
export function readingNote(facts: Facts, words: Speech = english, usableAh?: number): string | undefined {
  const box = coolboxNote(facts, usableAh, words);
  if (box) return box;
  const threeWay = threeWayNote(facts, words);
  const timed = facts.loads?.find(l => coolingReading(l) === 'hours');
  if (timed) {
    const gaps = { thing: timed.name, hours: words.significant(present(runningHours(timed))) };
    const note = words.say(
      'reading-hours',
      'I took {hours} h a day as how long the {thing}’s compressor runs.',
      gaps,
    );
    return threeWay ? `${note} ${threeWay}` : note;
  }
  const load = facts.loads?.find(l => coolingReading(l) === 'running');
  if (!load) return threeWay ?? averageNote(facts, words);
  const airC = facts.ambientC ?? 25;
  const { row, kind } = builtAs(load);
  const share = decimals(
    100 * dutyAt(usualCooler(present(present(row).setPointC), undefined, kind), airC),
    0,
  );
  const taken = { thing: load.name, drawn: draw(load, words), share, air: words.significant(airC) };
  const note = words.say(
    'reading-note',
    'I took {drawn} as the {thing}’s draw while it runs, about {share} % of the time at {air} °C. If it’s the average, say “{thing} averages {drawn}”.',
    taken,
  );
  return threeWay ? `${note} ${threeWay}` : note;
}

/** Whether it takes anything that is known: a thing of no known kind needs its draw told, and "lights 0 h" takes none. */
const drains = (load: Load): boolean =>
  (isDrawTold(load) || isWhole(load) || applianceOf(load.name) !== undefined) &&
  load.dutyPercent !== 0 &&
  load.hoursPerDay !== 0 &&
  load.minutesPerDay !== 0;

/** What every answer to a question of use hangs on, for `hangsOn`: what each thing draws, for how long. */
export const drawFacts = [
  'loads',
  'loads.currentA',
  'loads.powerW',
  'loads.hoursPerDay',
  'loads.minutesPerDay',
  'loads.energyWhPerDay',
  'loads.chargeAhPerDay',
  'dailyUseAh',
  'dailyUseWh',
] as const;

/** Whether each load has its hours. */
export const areTimed = ({ loads }: Facts): boolean => !!loads?.length && loads.every(hasHours);

/** Whether something that drains the battery is told. */
export const hasUse = (facts: Facts): boolean =>
  !!facts.loads?.some(drains) ||
  facts.dailyUseAh !== undefined ||
  facts.dailyUseWh !== undefined ||
  !!facts.inverter?.isLeftOn;
