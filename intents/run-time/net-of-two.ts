import type { Reply } from '#answer/reply.ts';
import { duration, timeSpan } from '#answer/say.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { exactFigure, figure, reasons } from '../figures.ts';
import { amountsOf } from '../figures-told.ts';
import type { RequestContext } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { isCapacity } from '../read-twice.ts';
import { describeBank } from '../words.ts';
import type { WorkedBeside } from '../worked-beside.ts';
import { computeRunTime } from './compute.ts';

/** What came in and what went out of a battery in a day, Ah. */
interface InAndOut {
  readonly inAh: number;
  readonly outAh: number;
}

const inWords: ReadonlySet<string> = new Set(
  'made makes making harvest harvested yield generated generates gave gives brought collected'.split(' '),
);
const outWords: ReadonlySet<string> = new Set(
  'out use used uses using ate eats eat took takes take consumption consumed consumes consume draws drew pulled pulls burn burns burnt burned usage chewed chews drains'.split(
    ' ',
  ),
);
/** "Put in 20": with "in" behind them these fill. */
const fills: ReadonlySet<string> = new Set(
  'put puts putting comes coming came goes going went get gets getting'.split(' '),
);
/** "30 Ah in and 45 out": what may stand behind. */
const joining: ReadonlySet<string> = new Set(
  'and but yesterday today from vs versus every each per a'.split(' '),
);
/** Words that say both, by what they stand behind: "the panel did 24". */
const most = { wordsBack: 7, bare: 400 } as const;

/** With more things each has its own use. */
const mostThings = 2;

type Side = 'in' | 'out';

/** Which way a word or a thing points. */
const sideOf = ({ kind, text }: Mention): Side | undefined => {
  if (kind === 'solar' || kind === 'regulator' || kind === 'controller' || inWords.has(text)) return 'in';
  return kind === 'thing' || outWords.has(text) ? 'out' : undefined;
};

/** The side of a figure: "in" or "out" right behind it, else the nearest word or thing before it. */
function sideOfFigure(mentions: readonly Mention[], at: number): Side | undefined {
  // "Put 25 Ah back in".
  const [behind, second, third] = mentions.slice(at + 1, at + 5).filter(({ text }) => text !== 'back');
  const said = behind?.kind === 'word' ? sideOf(behind) : undefined;
  if (said) return said;
  const [way, after] = behind?.kind === 'rate' ? [second, third] : [behind, second];
  const isEnd = after === undefined || after.kind === 'sign' || joining.has(after.text);
  if ((way?.text === 'in' || way?.text === 'out') && isEnd) return way.text;
  for (let before = at - 1; before >= Math.max(0, at - most.wordsBack); before--) {
    const mention = mentions[before];
    if (mention?.kind === 'amount') return undefined;
    if (mention?.text === 'in' && fills.has(mentions[before - 1]?.text ?? '')) return 'in';
    const side = mention && sideOf(mention);
    if (side) return side;
  }
  return undefined;
}

/** The two figures of a day, each with its side; undefined where there are more, or fewer. */
function inAndOut({ recognised: { mentions } }: Pick<ParsedMessage, 'recognised'>): InAndOut | undefined {
  // For so many days it is a trip, and a net current read off holds all that comes in.
  const isOther =
    amountsOf(mentions, 'time').some(({ value }) => value >= 48) || amountsOf(mentions, 'current').length > 0;
  if (isOther || mentions.filter(({ kind }) => kind === 'thing').length > mostThings) return undefined;
  const figures = mentions.flatMap((mention, at) => {
    const isAh =
      mention.kind === 'amount' && mention.dimension === 'charge' && !isCapacity(mentions, mention);
    const isBare =
      mention.kind === 'number' &&
      mention.told > 1 &&
      mention.told < most.bare &&
      [mentions[at - 2], mentions[at - 1], mentions[at + 1]].some(
        next => outWords.has(next?.text ?? '') || inWords.has(next?.text ?? ''),
      );
    const side = isAh || isBare ? sideOfFigure(mentions, at) : undefined;
    return side ? [{ side, ah: mention.value, isAh }] : [];
  });
  const [ins, outs] = (['in', 'out'] as const).map(side => figures.filter(one => one.side === side));
  const [into, outOf] = [ins?.[0], outs?.[0]];
  if (ins?.length !== 1 || outs?.length !== 1 || !into || !outOf) return undefined;
  return into.isAh || outOf.isAh ? { inAh: into.ah, outAh: outOf.ah } : undefined;
}

/** To be used of each 100 Ah, Ah: half of lead-acid, four fifths of lithium. Common practice. */
const usableAh = { agm: 50, lithium: 80 } as const;

function answerNet(told: Facts, setting: RequestContext, { inAh, outAh }: InAndOut): Reply {
  const sums = `${plain(inAh)} Ah in, ${plain(outAh)} Ah out`;
  const netAh = inAh - outAh;
  const figures = { solarYield: exactFigure(inAh, 'Ah'), dailyUse: exactFigure(outAh, 'Ah') };
  if (netAh >= 0)
    return {
      headline: `It keeps up: ${netAh < 0.5 ? 'nothing' : `${plain(netAh)} Ah a day`} to spare, ${sums}. It lasts as long as days are like that.`,
      lines: ['A dull day gives a third or less, and a full battery turns the rest away.'],
      verdict: 'yes',
      figures,
      next: ['what battery do I need?', 'what solar do I need?'],
    };
  const shortAh = -netAh;
  const facts: Facts = {
    ...told,
    dailyUseAh: shortAh,
    dailyUseWh: undefined,
    loads: undefined,
    inverter: undefined,
  };
  const bank = bankFor(facts);
  const short = `${plain(shortAh)} Ah a day short: ${sums}`;
  if (!bank || bank.capacityAh === inAh || bank.capacityAh === outAh)
    return {
      headline: `${short}.`,
      lines: [
        `From full, 100 Ah of AGM covers that for ${duration((24 * usableAh.agm) / shortAh)}, of lithium for ${duration((24 * usableAh.lithium) / shortAh)}.`,
        'How big is yours, which kind, and how full?',
      ],
      verdict: null,
      figures,
      next: ['100Ah AGM', '100Ah lithium'],
    };
  const explored = computeRunTime({ ...facts, batteries: facts.batteries ?? [] }, setting);
  const { runTime } = explored.figures;
  const range = timeSpan(runTime);
  const from =
    bank.stateOfChargePercent === undefined ? 'from full' : `from ${plain(bank.stateOfChargePercent)} %`;
  return {
    headline: `${short}. ${describeBank(bank, setting)} carries that for ${duration(runTime.value)}${range ? ` (${range})` : ''}.`,
    lines: [
      `That is ${from}, if each day is like that one: a dull day takes off what the sun doesn’t bring.`,
    ],
    verdict: null,
    figures: { ...figures, runTime: figure(runTime, 'h') },
    ...reasons(explored),
    next: ['what solar do I need?', 'show the working'],
  };
}

/** How long it lasts by what came in and what went out in a day, both told. */
export const netOfTwo: WorkedBeside = {
  name: 'net-of-two',
  spots: [
    'how_long|how_many|last|lasts|keep_up|keeping_up|keeps_up|short|behind|ok|okay|enough|break_even|breaking_even|flat|run_out|have_i_got|have_we_got|make_it|net|ahead|winning|losing|holding|sustainable|covered|on_top -what_size|how_big|what_panel|what_battery|which_panel|reckons|says_i|hours_of_sun|how_much_solar|how_much_panel|more_panel|tilt|to_full|till_full|full_again|back_to|before_were_even|weather|month|how_many_watts|replace|do_i_drive|dcdc|dc_dc|charger',
  ],
  when: parsed => inAndOut(parsed) !== undefined,
  takes: ['batteries', 'arrangement', 'systemVoltageV', 'ambientC'],
  reply: (facts, setting) => {
    const both = inAndOut(setting.parsed);
    return both
      ? answerNet(facts, setting, both)
      : { headline: 'Tell me what came in and what went out in that day, in Ah.', verdict: null };
  },
};
