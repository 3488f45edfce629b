import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { exactFigure } from '../figures.ts';
import { amountsOf } from '../figures-told.ts';
import { isSpotted } from '../spotting.ts';
import type { WorkedBeside } from '../worked-beside.ts';

/**
 * Limits of a battery's own temperature, °C: makers' sheets that agree, which its own sheet goes before. Lithium is
 * charged from 0 to 45 and used to 55 or 60; lead-acid is charged up to 50, and gasses more from 40 on.
 */
const limits = {
  frozen: 0,
  gently: 5,
  warm: 35,
  lithiumCharge: 45,
  leadWarm: 40,
  leadCharge: 50,
  use: 55,
  alarm: 60,
} as const;

const ofBattery: ReadonlySet<string> = new Set(['battery', 'chemistry', 'bms']);
/** Sums of their own: with these a temperature is one fact among others. */
const ofSums = ['charge', 'current', 'power', 'energy', 'time', 'voltage', 'percent'] as const;
const tempWords = ['temp|temps|temperature|degrees|deg'];

/** The one temperature that is told, °C; "temp says -4" as well. */
function temperatureIn(words: readonly string[], mentions: readonly Mention[]): number | undefined {
  const [told, ...more] = amountsOf(mentions, 'temperature');
  if (more.length > 0) return undefined;
  const minus = (at: number): number => (/^(?:-|−|minus)$/.test(mentions[at - 1]?.text ?? '') ? -1 : 1);
  if (told) return told.isNegative ? -Math.abs(told.value) : told.value * minus(mentions.indexOf(told));
  const numbers = mentions.filter(({ kind }) => kind === 'number');
  const [bare, ...others] = numbers;
  if (!bare || others.length > 0 || !isSpotted(words, tempWords)) return undefined;
  return bare.isNegative ? -Math.abs(bare.told) : bare.told * minus(mentions.indexOf(bare));
}

/** What may stand between a battery and its temperature. */
const linking: ReadonlySet<string> = new Set(
  's is at reads read reading showing shows sitting sits now temp temps temperature says said has the on in app bms sensor of got to gets hit hits up its about around already minus - − : , degrees deg cell cells core internal case = just only'.split(
    ' ',
  ),
);
const onIt: ReadonlySet<string> = new Set('on the my a too hot for'.split(' '));

/** Whether the temperature is the battery's own: nothing but words of reading stands between the two. */
function isOwn(mentions: readonly Mention[]): boolean {
  const at = mentions.findIndex(({ kind, dimension }) => kind === 'number' || dimension === 'temperature');
  const of = mentions.findLastIndex(({ kind }, i) => i < at && ofBattery.has(kind));
  const isBefore =
    of >= 0 &&
    mentions.slice(of + 1, at).every(({ text }, i, all) => linking.has(text) || all[i - 1]?.text === 'the');
  // "33 degrees on the bms".
  const behind = mentions
    .slice(at + 1)
    .findIndex(({ text }) => !onIt.has(text) && !/^(?:degrees|deg|c)$/.test(text));
  const isBehind = behind > 0 && ofBattery.has(mentions[at + 1 + behind]?.kind ?? '');
  return isBefore || isBehind;
}

function ownIn({ recognised: { words, mentions } }: Pick<ParsedMessage, 'recognised'>): number | undefined {
  const isSum = ofSums.some(dimension => amountsOf(mentions, dimension).length > 0);
  return !isSum && isOwn(mentions) ? temperatureIn(words, mentions) : undefined;
}

interface Said {
  readonly headline: string;
  readonly verdict: 'yes' | 'no' | 'tight';
  readonly cautions?: readonly CautionCode[];
}

/** What may be done at it, on lithium. */
function onLithium(c: number): Said {
  const at = `${decimals(c, 0)} °C`;
  if (c > limits.use)
    return {
      headline: `Too hot at ${at}: stop charging and take the loads off until it’s under ${limits.lithiumCharge} °C.`,
      verdict: 'no',
    };
  if (c > limits.lithiumCharge)
    return {
      headline: `Too hot to charge at ${at}: lithium takes charge up to about ${limits.lithiumCharge} °C. Light use is all right.`,
      verdict: 'no',
    };
  if (c > limits.warm)
    return {
      headline: `Warm, but within limits at ${at}: lithium may be charged up to about ${limits.lithiumCharge} °C.`,
      verdict: 'tight',
    };
  if (c >= limits.gently)
    return { headline: `Fine: at ${at} lithium may be charged and used as usual.`, verdict: 'yes' };
  if (c > limits.frozen)
    return {
      headline: `Use it as usual at ${at}, but charge it only gently until it’s past ${limits.gently} °C.`,
      verdict: 'tight',
      cautions: ['lithium-cold'],
    };
  return {
    headline: `Don’t charge lithium at ${at}: it ruins the cells. Using it is fine.`,
    verdict: 'no',
    cautions: ['lithium-cold'],
  };
}

/** The same on lead-acid. */
function onLead(c: number): Said {
  const at = `${decimals(c, 0)} °C`;
  if (c > limits.leadCharge)
    return {
      headline: `Too hot at ${at}: stop charging until it’s under ${limits.leadWarm} °C, as it gasses and dries out.`,
      verdict: 'no',
      cautions: ['battery-gas'],
    };
  if (c > limits.leadWarm)
    return {
      headline: `Hot at ${at}: charge it gently at most, as lead-acid gasses more and ages twice as fast each 10 °C.`,
      verdict: 'tight',
      cautions: ['battery-gas'],
    };
  if (c > limits.frozen)
    return { headline: `Fine: at ${at} lead-acid may be charged and used.`, verdict: 'yes' };
  return {
    headline: `It may be used and charged at ${at} unless it froze: a flat one freezes. Never charge a frozen one.`,
    verdict: 'tight',
  };
}

/** The same where nobody said which kind: what both bear. */
function onEither(c: number): Said {
  const at = `${decimals(c, 0)} °C`;
  if (c > limits.lithiumCharge)
    return {
      headline: `Too hot to charge at ${at}: lithium stops at about ${limits.lithiumCharge} °C, and lead-acid gasses more.`,
      verdict: 'no',
      cautions: ['battery-gas'],
    };
  if (c > limits.frozen && c < limits.gently)
    return {
      headline: `Fine to use at ${at}; lithium is only charged gently under ${limits.gently} °C.`,
      verdict: 'tight',
    };
  if (c > limits.warm)
    return {
      headline: `Warm at ${at}, near the ${limits.lithiumCharge} °C that lithium may be charged up to: shade and air first.`,
      verdict: 'tight',
    };
  return c <= limits.frozen
    ? {
        headline: `Fine to use at ${at}, but lithium must not be charged under 0 °C. Lead-acid may, unless it froze.`,
        verdict: 'tight',
        cautions: ['lithium-cold'],
      }
    : { headline: `Fine: any kind may be charged and used at ${at}.`, verdict: 'yes' };
}

function said(c: number, chemistry: Chemistry | undefined): Said {
  if (chemistry === undefined) return onEither(c);
  return chemistry === 'lfp' ? onLithium(c) : onLead(c);
}

function linesFor(c: number, chemistry: Chemistry | undefined): readonly string[] {
  const lithium =
    'Lithium is usually charged at 0 to 45 °C and used up to 55 to 60 °C: its label comes first, and its BMS cuts off.';
  const lead =
    'Lead-acid is charged up to about 50 °C, with lower volts the hotter it is: a charger that senses it does that.';
  const own = chemistry === 'lfp' ? [lithium] : chemistry === undefined ? [lithium] : [lead];
  if (c > limits.warm)
    return [
      ...own,
      'Shade and air for it: lid open, out of the sun, away from engine and exhaust, and charge in the cool of the day.',
      `Hot by itself with nothing on, swollen, smelling or over ${limits.alarm} °C: get away from it, and leave it off.`,
    ];
  return c < limits.gently
    ? [
        ...own,
        'It’s the cells that count: bring it into the warm, or warm it with a load or a pad, then charge.',
      ]
    : own;
}

/** What may be done with a battery at the temperature that it has itself. */
export const ownTemperature: WorkedBeside = {
  name: 'own-temperature',
  spots: [
    'battery|batterys|batteries|batt|batts|agm|gel|lithium|lifepo|bms|cell|cells degrees|deg|c|f|temp|temps|temperature|reads|reading|showing|shows|says|is|at|too_hot|hot|its -outside|air|ambient|weather|forecast|today|tonight|fridge|freezer|inverter|controller|how_long|how_much|how_many|lasts|how_big|solar|panel|panels|sleep|camping|nights|winter|summer|volts|heater|set|capacity|lose|loses|vs|versus|better|which|kept|store|stored|storing|storage|life|terminal|cable|lug|plug|fuse|swollen|smoke|smoking|hissing|smells|puffed|bulging|fat|charge|charging|charges|charger|or|float|percent|frozen|freeze|ruined|rate|why|can|there',
  ],
  // What is dangerous at it has an answer of its own.
  when: parsed => parsed.hazards.length === 0 && ownIn(parsed) !== undefined,
  takes: [],
  reply: ({ batteries = [] }: Facts, { parsed }): Reply => {
    const c = ownIn(parsed) ?? limits.warm;
    const { mentions } = parsed.recognised;
    const chemistry =
      (mentions.find(({ kind }) => kind === 'chemistry')?.key as Chemistry | undefined) ??
      batteries.find(one => one.chemistry)?.chemistry;
    const { headline, verdict, cautions = [] } = said(c, chemistry);
    return {
      headline,
      lines: linesFor(c, chemistry),
      verdict,
      figures: { batteryC: exactFigure(c, '°C') },
      cautions,
      next: ['how hot may a battery get?'],
    };
  },
};
