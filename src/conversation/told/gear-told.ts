import { cools } from '#intents/facts.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import { isSameName } from '#rig/merge.ts';
import type { Stated, StatedBattery, StatedLoad } from '#rig/rig.ts';
import { withCountTold } from './count-told.ts';
import { isInputTold } from './input-told.ts';
import { withNightlyTold } from './nightly-told.ts';
import { withRoleTold } from './role-told.ts';
import { withSeriesTold } from './series-told.ts';
import { withSpotTold } from './spot-told.ts';
import { withWearTold } from './wear-told.ts';
import { withWeekendTold } from './weekend-told.ts';

/**
 * What the words beside a thing tell of how it is built: a fridge's litres, "kitchen", "3 way", mains volts, an inverter
 * that is left on, a battery that is old. The reader names these words and takes no fact from them; the facts kept with them are no part of
 * what is called understood.
 */

const isBetween = (value: number, low: number, high: number): boolean => value >= low && value <= high;

/** Words that make the fridge right behind them a household one. */
const houseWords: ReadonlySet<string> = new Set([
  'household',
  'domestic',
  'residential',
  'kitchen',
  'house',
  'home',
]);

/** How far apart a figure and its fridge may stand, in tokens, before it and behind it. */
const reach = { before: 2, behind: 4 } as const;

/** The amounts of a unit that stand by a thing, with nothing else that uses power between. */
function amountsBy(thing: Mention, { mentions }: Recognised, unit: string): Mention[] {
  return mentions.filter(amount => {
    if (amount.kind !== 'amount' || amount.unit !== unit) return false;
    const isBefore = amount.to <= thing.from;
    const gap = isBefore ? thing.from - amount.to : amount.from - thing.to;
    if (gap < 0 || gap > (isBefore ? reach.before : reach.behind)) return false;
    // "A 20 L kettle" behind a fridge: it is that thing's own.
    const isOthers =
      !isBefore && mentions.some(m => m.kind === 'thing' && isBetween(m.from - amount.to, 0, 1));
    if (isOthers) return false;
    const [from, to] = isBefore ? [amount.to, thing.from] : [thing.to, amount.from];
    return !mentions.some(m => m.from >= from && m.to <= to && !['word', 'sign', 'noun'].includes(m.kind));
  });
}

/** The words before a thing, nearest first. */
const before = (thing: Mention, { words }: Recognised, count: number): string[] =>
  words.slice(Math.max(0, thing.from - count), thing.from).reverse();

const ofWater: ReadonlySet<string> = new Set(['water', 'of', 'fuel', 'diesel', 'petrol', 'gas']);

function volumeOf(thing: Mention, recognised: Recognised): number | undefined {
  const found = amountsBy(thing, recognised, 'L').find(
    ({ value, to, spelled = 'l' }) =>
      spelled.startsWith('l') && isBetween(value, 5, 700) && !ofWater.has(recognised.words[to] ?? ''),
  );
  return found?.value;
}

const isThreeWay = (thing: Mention, recognised: Recognised): boolean => {
  const [last = '', first = ''] = before(thing, recognised, 2);
  const { text } = recognised.mentions.find(m => m.to === thing.from - 1) ?? { text: '' };
  const isOfThree = first === 'three' || text === '3' || text === 'three';
  return last === 'absorption' || (last === 'way' && isOfThree);
};

const thermoelectric: ReadonlySet<string> = new Set(['thermoelectric', 'peltier', 'compressorless']);

/** Whether the words right by a thing that cools say that it has no compressor. */
function isThermoelectric(thing: Mention, { words }: Recognised): boolean {
  const behind = words.slice(thing.to, thing.to + 4);
  const at = behind.indexOf('compressor');
  const isWithout = at > 0 && behind.slice(0, at).some(word => word === 'without' || word === 'no');
  const near = [...words.slice(Math.max(0, thing.from - 3), thing.to), ...behind.slice(0, 2)];
  return isWithout || near.some(word => thermoelectric.has(word));
}

/** Whether its draw was told as energy or charge an hour, which is an average: "uses 45 Wh an hour". */
const isHourly = ({ powerW, currentA }: StatedLoad, { mentions }: Recognised): boolean =>
  mentions.some(
    ({ kind, rate, dimension, value }) =>
      kind === 'amount' &&
      rate === 'hour' &&
      (dimension === 'energy' ? value === powerW : dimension === 'charge' && value === currentA),
  );

/** Words by which a draw is told for what a fridge takes while it runs. */
const whileRunning = [
  'while|when|whenever|only|once running_on|running|it_runs|its_running|compressor_runs|compressor_is_on|compressor_on|cycled_on -average -avg',
];

/** Whether the draw of the one thing that cools is told as what it takes while it runs. */
const isOfRunning = (
  { currentA, powerW, isAverage, dutyPercent }: StatedLoad,
  recognised: Recognised,
): boolean =>
  (currentA ?? powerW) !== undefined &&
  isAverage === undefined &&
  dutyPercent === undefined &&
  recognised.mentions.filter(m => m.kind === 'thing').length === 1 &&
  isSpotted(recognised.words, whileRunning);

/** One load with what its words tell. */
function told(load: StatedLoad, recognised: Recognised): StatedLoad {
  if (isInputTold(load, recognised)) return { ...load, isInput: true };
  if (!cools(load.name)) return load;
  const things = recognised.mentions.filter(m => m.kind === 'thing' && cools(m.key));
  const thing = things.find(m => isSameName(m.key, load.name) || isSameName(m.text, load.name)) ?? things[0];
  if (!thing) return load;
  const volts = amountsBy(thing, recognised, 'V').map(({ value }) => value);
  const isMains = volts.some(v => isBetween(v, 100, 127) || isBetween(v, 220, 250));
  const isLow = load.supply === 'dc' || volts.some(v => v <= 28);
  const volumeL = load.volumeL ?? volumeOf(thing, recognised);
  const [last = ''] = before(thing, recognised, 1);
  const isThree = isThreeWay(thing, recognised);
  const isHouse = !isLow && houseWords.has(last);
  const { count, ...rest } = load;
  return {
    ...rest,
    // "3 way" is no count.
    ...(count !== undefined && !(isThree && count === 3) && { count }),
    ...(isMains && !load.supply && { supply: 'ac' }),
    ...(isHourly(load, recognised)
      ? { isAverage: true }
      : isOfRunning(load, recognised) && { isAverage: false }),
    ...(volumeL !== undefined && { volumeL }),
    ...(isThree
      ? { build: 'three-way' }
      : isThermoelectric(thing, recognised)
        ? { build: 'thermoelectric' }
        : isHouse && { build: 'household' }),
  };
}

/** What follows an inverter that is never switched off. */
const leftOn = [
  'left on',
  'always on',
  'stays on',
  'on all',
  'on 24',
  'on day',
  'on permanently',
  'left running',
];
const leaves = ['leave', 'leaving', 'left'];

/** Whether the words leave an inverter on. */
function isLeftOn({ mentions, words, tokens }: Recognised): boolean {
  return mentions.some(({ kind, from, to }) => {
    if (kind !== 'inverter') return false;
    const behind = tokens
      .slice(to, to + 5)
      .map((_, i) => words[to + i] || `${mentionText(mentions, to + i)}`);
    const said = behind.join(' ');
    const isLed = words.slice(Math.max(0, from - 4), from).some(word => leaves.includes(word));
    return leftOn.some(phrase => said.includes(phrase)) || (isLed && behind[0] === 'on');
  });
}
const mentionText = (mentions: readonly Mention[], at: number): string =>
  mentions.find(m => m.from === at)?.text ?? '';

/** A battery told in mAh, and no volts with them: a power bank, whose label counts at the volts of its cells. */
function cellTold(battery: StatedBattery, { mentions }: Recognised): StatedBattery {
  const { capacityAh, voltageV } = battery;
  if (capacityAh === undefined || voltageV !== undefined) return battery;
  const isMilli = mentions.some(
    ({ unit, value }) => unit === 'mAh' && Math.abs(value - capacityAh) < 1e-6 * capacityAh,
  );
  return isMilli ? { ...battery, isOfCell: true } : battery;
}

const stations = [
  'power_station|power_stations|powerstation|powerstations|power_pack|powerpack|solar_generator|battery_generator|battery_station',
];

/** The one battery of a message that calls it a power station, told by its Wh or not sized at all. */
const stationTold = (batteries: readonly StatedBattery[], { words }: Recognised): StatedBattery[] =>
  batteries.map(battery =>
    batteries.length === 1 && battery.capacityAh === undefined && isSpotted(words, stations)
      ? { ...battery, isStation: true }
      : battery,
  );

/** The facts with what the words beside their things tell of how they are built, and with a latitude told in degrees. */
export function withGearTold(stated: Stated, recognised: Recognised): Stated {
  const spotted = withSpotTold(withSeriesTold(withCountTold(stated, recognised), recognised), recognised);
  const nightly = withNightlyTold(withWeekendTold(spotted, recognised), recognised);
  const facts = withRoleTold(nightly, recognised);
  const { loads, inverter, batteries } = facts;
  if (!loads && !inverter && !batteries) return facts;
  return {
    ...facts,
    ...(loads && { loads: loads.map(load => told(load, recognised)) }),
    ...(inverter && isLeftOn(recognised) && { inverter: { ...inverter, isLeftOn: true } }),
    ...(batteries && {
      batteries: stationTold(withWearTold(batteries, recognised), recognised).map(battery =>
        cellTold(battery, recognised),
      ),
    }),
  };
}

/** No reading says of a draw that it is no average. */
function loadAsRead({
  volumeL: _litres,
  build: _build,
  isInput: _in,
  isAverage,
  ...load
}: StatedLoad): StatedLoad {
  return isAverage === true ? { ...load, isAverage } : load;
}

/** The facts without it: as the message was read. */
export function asRead(facts: Stated): Stated {
  const { loads, inverter, batteries } = facts;
  const { isLeftOn: _on, ...plainInverter } = inverter ?? {};
  return {
    ...facts,
    ...(loads && { loads: loads.map(loadAsRead) }),
    ...(inverter && { inverter: plainInverter }),
    ...(batteries && {
      batteries: batteries.map(
        ({ wear: _wear, isOfCell: _cell, isStation: _station, ...battery }) => battery,
      ),
    }),
  };
}
