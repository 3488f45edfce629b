import { exactly, rounded, span } from '#answer/say.ts';
import { plain } from '#quantity/round.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted, spotted } from '../spotting.ts';
import { usualWatts } from '../usual-watts.ts';
import type { EnergyBudget } from './compute.ts';

/** What of a day's use is asked for, by its words. */
const ways = [
  {
    way: 'much-in-all',
    spots: ['that_a_lot|is_it_a_lot|even_matter|that_bad|that_too_much -how_much -next_to'],
  },
  {
    way: 'watt-hours',
    spots: ['watt_hours|watthours|wh|kwh|kilowatt_hours in|how_many|how_much|whats|what'],
  },
  {
    way: 'amps',
    spots: [
      'how_many_amps|what_amps|whats_the_amps|how_many_amps_does -hour -hours -day -daily -night -overnight -week',
    ],
  },
  {
    way: 'much',
    spots: [
      'a_lot|lots|heaps|worth_worrying|bother|wasteful|bugger_all|hardly_anything -open* -save -saves -how_many',
      'use|uses|using|take|takes|draw|draws|need|needs|drain|power much -how_much -too_much -as_much -so_much -save -saves -more',
      'basically_nothing|next_to_nothing|thats_nothing|even_notice|notice_it|notice_that|is_that_bad|worth_mentioning|worth_worrying|that_much -how_much',
      'noticeable|silly|big_user|heavy_on|sip|sips|thirsty|how_bad|great_drain|big_drain|even_count|count_at_all|is_nothing|nothing_right|nothing_in_it -how_long -save',
      'matter|matters|does_that_show|even_show does|that|it -how_much -how_long -open* -if -most -what',
    ],
  },
] as const;

type Way = (typeof ways)[number]['way'];

const wayOf = ({ parsed }: RequestContext): Way | undefined =>
  spotted(parsed.recognised.words, ways, ({ spots }) => spots)?.way;

/**
 * How much a day's use is, as the share it takes of the battery there is, else of the 100 Ah AGM that most start with:
 * under a twentieth nobody notices, a fifth is a light or a telly, three fifths a fridge. Common practice.
 */
const amounts = [
  { upTo: 0.05, says: 'Hardly anything' },
  { upTo: 0.2, says: 'Not much' },
  { upTo: 0.65, says: 'A fair bit' },
  { upTo: Infinity, says: 'A lot' },
] as const;

const usualAh = 100;

/** Nearest quarter of what mild weather takes on top, in words. */
function more(times: number): string {
  if (times < 1.08) return 'hardly more than';
  if (times < 1.18) return 'an eighth more than';
  if (times < 1.29) return 'a quarter more than';
  if (times < 1.42) return 'a third more than';
  if (times < 1.6) return 'half as much again as';
  if (times < 1.85) return 'three quarters more than';
  return times < 2.3 ? 'about twice' : `about ${plain(Math.round(times))} times`;
}

/** What a thing that cools takes in the heat told, beside mild weather. */
function heated({ inHeat }: EnergyBudget, daily: string, spread: string): string | undefined {
  if (!inHeat) return undefined;
  const { airC, mildAh, times, isCounted } = inHeat;
  const heat = `at ${plain(airC)} °C`;
  return isCounted
    ? `${sentenceOf(daily)} ${heat}, ${more(times)} the ${rounded(mildAh)} Ah at 25 °C${spread}.`
    : `More ${heat}: about ${rounded(mildAh * times)} Ah a day, if ${rounded(mildAh)} Ah is what it takes at 25 °C.`;
}

const sentenceOf = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

/** More than a day and up to this long a time is summed up, h. */
const summed = { overH: 25, mostH: 24 * 60 } as const;

/** Days of the week, as nights of a stay are named by them. */
const weekdays: ReadonlySet<string> = new Set(
  'mon monday tue tues tuesday wed wednesday thu thurs thursday fri friday sat saturday sun sunday'.split(
    ' ',
  ),
);
/** Stays as they are called, in days. */
const stays = [
  { days: 3, spots: ['long_weekend'] },
  { days: 2, spots: ['weekend|weekends -per_day'] },
  { days: 14, spots: ['fortnight'] },
  { days: 7, spots: ['a_week|the_week|whole_week|all_week|per_week -times -nights -days'] },
] as const;

/** How long the stay is that is asked about (h): told, or by its nights' or its own name. */
function stayH({ parsed: { facts, recognised } }: RequestContext): number | undefined {
  if (facts.durationH !== undefined) return facts.durationH;
  const { words } = recognised;
  const nights = new Set(words.filter(word => weekdays.has(word)).map(word => word.slice(0, 3))).size;
  if (nights > 1 && isSpotted(words, ['night|nights|evening|evenings -to -till -until'])) return 24 * nights;
  const stay = spotted(words, stays, ({ spots }) => spots);
  return stay && 24 * stay.days;
}

/** The first line where more is asked than what a day takes: its sum over days, its amps, whether it is much. */
export function askedHeadline(result: EnergyBudget, setting: RequestContext): string | undefined {
  const { dailyUse, dailyEnergy } = result.explored.figures;
  const { value, low, high } = dailyUse;
  const isRange = high - low > 0.05 * value;
  const spread = isRange ? ` (${span(low, high, 'Ah')})` : '';
  const daily = `about ${rounded(value)} Ah a day`;
  const durationH = stayH(setting);
  if (durationH !== undefined && durationH > summed.overH && durationH <= summed.mostH) {
    const days = durationH / 24;
    const range = isRange ? ` (${span(low * days, high * days, 'Ah')})` : '';
    return `About ${rounded(value * days)} Ah over ${exactly(durationH)}${range}: ${rounded(value)} Ah a day.`;
  }
  const way = wayOf(setting);
  if (result.overH !== undefined) {
    const share = result.overH / 24;
    const range = isRange ? ` (${span(low * share, high * share, 'Ah')})` : '';
    return `About ${rounded(value * share)} Ah in ${exactly(result.overH)}${range}.`;
  }
  if (result.inHeat) return heated(result, daily, spread);
  if (way === 'watt-hours') {
    const range = isRange ? ` (${span(dailyEnergy.low, dailyEnergy.high, 'Wh')})` : '';
    return `About ${rounded(dailyEnergy.value)} Wh a day${range}.`;
  }
  const [only, other] = result.parts;
  const watts = only && !other && usualWatts(only.load, setting.parsed.recognised.words);
  if (watts) return watts;
  if (way === 'amps' && only && !other && only.currentA > 0)
    return `About ${plain(only.currentA)} A${only.duty < 1 || only.hours < 24 ? ' while it runs' : ', all the time'}; ${daily}${spread}.`;
  // Of one thing among others the sum says nothing.
  if (way === 'much-in-all' || (way === 'much' && !other)) {
    const share = result.days ? 1 / result.days : result.dayIn.agmAh / usualAh;
    const amount = amounts.find(({ upTo }) => share <= upTo)?.says;
    return `${amount}: ${daily}${spread}.`;
  }
  return undefined;
}
