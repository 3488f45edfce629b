import type { Reply } from '#answer/reply.ts';
import { quarters } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { decimals, significant } from '#quantity/round.ts';
import { powerBankCellV, powerBankShare } from '#rig/cell.ts';
import { loadCautions } from '../cautions.ts';
import { reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { describeBank } from '../words.ts';
import { stationOf } from './answer.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';

/**
 * What a full charge takes from the battery, Wh: likely, low, high. Phones hold 15 to 19 Wh (4000 to 5000 mAh at
 * 3.85 V), tablets 28 to 40, laptops 45 to 75, drones 30 to 60; a fifth is lost on the way. Makers' sheets, from memory.
 */
const perCharge: Readonly<Record<string, readonly [likelyWh: number, lowWh: number, highWh: number]>> = {
  phone: [20, 15, 25],
  tablet: [40, 30, 50],
  laptop: [75, 55, 95],
  drone: [55, 40, 80],
};

const asksCharges: readonly string[] = [
  'how_many|how_often|how_much times|charges|recharges|fills|top_ups',
  'how_many phones|phone|tablets|laptops|drones',
];
const asksFills: readonly string[] = [
  'how_many fill|charge|charges|recharge|times|top_up -days -nights -hours',
];
const powerBank: readonly string[] = ['power_bank*|powerbank*|powerbrick|mah'];

const asksBrews: readonly string[] = [
  'how_many brew*|boil*|cuppa*|cup|cups|kettle|kettles|coffee*|tea|teas|jug|jugs|litre*|times|of_those|of_these|of_them|goes',
  'how_often -how_long',
];

/** What a litre from 15 °C to the boil takes from the battery, Wh: 99 in the water, a tenth lost each in kettle and inverter. */
const boilWh = 122;
const cupL = 0.25;

/** "500 Wh gives you about 370 Wh to use", "A 100 Ah AGM gives you about 50 Ah to use". */
function storeGives(
  facts: RunTimeFacts,
  usableAh: number,
  bank: RunTime['bank'],
  setting: RequestContext,
): string {
  const stationWh = stationOf(facts);
  const wh = `gives you about ${decimals(usableAh * bank.voltageV, 0)} Wh to use`;
  return stationWh === undefined
    ? `${describeBank(bank, setting)} ${wh}`
    : `${setting.recalled.has('batteries') ? 'Your ' : ''}${decimals(stationWh, 0)} Wh ${wh}`;
}

/** How many cups a battery boils. */
function answerBrews(facts: RunTimeFacts, { figures, bank }: RunTime, setting: RequestContext): Reply {
  const litres = (figures.usableCapacity.value * bank.voltageV) / boilWh;
  return {
    headline: `About ${significant(litres / cupL, 2)} cups, ${significant(litres, 2)} litres boiled in all.`,
    lines: [
      `${storeGives(facts, figures.usableCapacity.value, bank, setting)}; a litre takes about ${boilWh} Wh, losses and all.`,
      'Boil only what you drink; gas does it for nothing from the battery.',
    ],
    verdict: null,
    next: ['show the working'],
  };
}

const asksTimes: readonly string[] = [
  'how_many|how_often -how_many_days -how_many_nights -how_many_hours -how_many_minutes -how_many_mins -how_many_amps -how_many_amp -how_many_ah -how_many_wh -how_many_watts -how_many_panels -how_many_batteries -how_long',
];

/** How long one go of things is, minutes, where it isn't told: common practice. */
const usualMinutes: Readonly<Record<string, number>> = {
  toaster: 3,
  microwave: 5,
  'coffee machine': 5,
  'sandwich press': 5,
  blender: 1,
  'hair dryer': 10,
  'hair straightener': 10,
  'air fryer': 15,
  'rice cooker': 25,
};

/** Longer than this it is a day's use, not one go, h. */
const longestGoH = 1;
/** From here on a current is cautioned, A. */
const bigA = 40;

/** What one go takes (h), and for how long (h) the battery carries one of them on end, or each day. */
interface Go {
  readonly h: number;
  readonly everyH: number;
  /** Nobody has told how long. */
  readonly isUsual: boolean;
}

/** One go of the one thing that runs; undefined where that can't be told. */
function goOf({ durationH, loads = [] }: RunTimeFacts): Go | undefined {
  const [load, other] = loads;
  if (!load || other || (load.powerW ?? load.currentA) === undefined) return undefined;
  const { minutesPerDay, hoursOnce, hoursPerDay } = load;
  const daily = (minutesPerDay === undefined ? undefined : minutesPerDay / 60) ?? hoursOnce ?? hoursPerDay;
  const minutes = usualMinutes[applianceOf(load.name)?.id ?? ''];
  const told = daily ?? durationH;
  const h = told ?? (minutes === undefined ? undefined : minutes / 60);
  return h === undefined || h <= 0 || h > longestGoH
    ? undefined
    : { h, everyH: daily === undefined ? h : 24, isUsual: told === undefined };
}

/** How many times a thing runs for the minutes told. */
function answerTimes(
  facts: RunTimeFacts,
  { figures, bank, peakA }: RunTime,
  { h, everyH, isUsual }: Go,
  setting: RequestContext,
): Reply {
  const times = (hours: number): number => hours / everyH;
  const n = (hours: number): string => {
    const all = Math.floor(times(hours) + 0.1);
    return all < 20 ? String(all) : significant(all, 2);
  };
  const { value, low, high } = figures.runTime;
  const eachWh = (figures.usableCapacity.value * bank.voltageV) / times(value);
  const minutes = 60 * h;
  const go = `${significant(minutes, 2)} ${minutes === 1 ? 'minute' : 'minutes'}`;
  const name = present(facts.loads?.[0]).name;
  const range = n(low) === n(high) ? '' : ` (${n(low)}–${n(high)})`;
  return {
    headline:
      times(value) < 1
        ? `Not once: ${go} of the ${name} takes more than is there to use.`
        : `About ${n(value)} ${n(value) === '1' ? 'time' : 'times'}${range}, ${go} each, with nothing else on.`,
    lines: [
      `${storeGives(facts, figures.usableCapacity.value, bank, setting)}; each takes about ${significant(eachWh, 2)} Wh.`,
      ...(isUsual ? [`I took ${go} each: tell me how long yours runs.`] : []),
    ],
    verdict: null,
    cautions: [...loadCautions(facts, bank), ...(peakA >= bigA ? (['big-current'] as const) : [])],
    next: ['show the working'],
  };
}

/** How many times it fills a thing whose own Wh are told. */
function answerFills({ figures }: RunTime, name: string): Reply {
  const { value, low, high } = figures.runTime;
  const times = (hours: number): string => quarters(Math.floor(hours / 12) / 2);
  return {
    headline: `About ${times(value)} in all${times(low) === times(high) ? '' : ` (${times(low)}–${times(high)})`}, losses counted.`,
    lines: [`A ${name} that isn’t empty takes less.`],
    verdict: null,
    next: ['show the working'],
  };
}

/** Words for how many times a battery fills a phone or the like, where that is asked; undefined for all else. */
export function answerCharges(
  facts: RunTimeFacts,
  result: RunTime,
  setting: RequestContext,
): Reply | undefined {
  const { words } = setting.parsed.recognised;
  const [load, other] = facts.loads ?? [];
  const id = load && applianceOf(load.name)?.id;
  const charge = id === undefined ? undefined : perCharge[id];
  const go = isSpotted(words, asksTimes) && charge === undefined ? goOf(facts) : undefined;
  if (go) return { ...answerTimes(facts, result, go, setting), ...reasons(result) };
  if (load && !other && /kettle|jug/i.test(load.name) && isSpotted(words, asksBrews))
    return { ...answerBrews(facts, result, setting), ...reasons(result) };
  if (load && !other && load.energyWhPerDay !== undefined && load.count === 1 && isSpotted(words, asksFills))
    return { ...answerFills(result, load.name), ...reasons(result) };
  const isAsked = isSpotted(words, asksCharges);
  if (!load || other || id === undefined || !charge || !isAsked) return undefined;
  const [battery] = facts.batteries;
  const isBank =
    battery?.capacityAh !== undefined && (battery.isOfCell === true || isSpotted(words, powerBank));
  const givesWh = isBank
    ? present(battery?.capacityAh) * powerBankCellV * powerBankShare
    : result.figures.usableCapacity.value * result.bank.voltageV;
  const [likelyWh, lowWh, highWh] = charge;
  const n = (eachWh: number): string => {
    const times = givesWh / eachWh;
    return times < 10 ? quarters(Math.floor(2 * times) / 2) : significant(times, 2);
  };
  const [least, most] = [n(highWh), n(lowWh)];
  const gives = isBank
    ? `Its mAh are told at a 3.7 V cell: it gives about ${decimals(givesWh, 0)} Wh.`
    : `${storeGives(facts, result.figures.usableCapacity.value, result.bank, setting)}.`;
  return {
    headline: `About ${n(likelyWh)} full ${id} charges (${least}–${most}).`,
    lines: [gives, `A ${id} takes about ${decimals(likelyWh, 0)} Wh from empty to full, losses and all.`],
    verdict: null,
    ...(isBank ? {} : reasons(result)),
    next: ['what is a watt hour?', 'show the working'],
  };
}
