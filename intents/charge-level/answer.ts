import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { span } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { stageSaid } from '../charge-stage.ts';
import { figure, workingOf } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { floorPercentOf } from '../level.ts';
import { isSpotted } from '../spotting.ts';
import { chemistryName } from '../words.ts';
import { type ChargeLevel, sizeAh } from './compute.ts';

const percent = (value: number): string => `${decimals(value, 0)} %`;
/** Within what a table of volts can tell. */
const roughly = (value: number): string => percent(Math.round(value / 5) * 5);
const kindOf = (result: ChargeLevel): string =>
  result.isChemistryAssumed
    ? 'lead-acid (you didn’t say which)'
    : result.chemistry === 'flooded'
      ? 'a wet battery'
      : chemistryName(result.chemistry);

/** By so much over what makers allow the volts of a charge are called too high, V. */
const overV = 0.15;

/** Whether the volts of a charge are as they should be. */
function judgedCharge(
  { volts = 0 }: Facts,
  { chemistry, isChemistryAssumed, blocks, chargeV: { low, high, float } }: ChargeLevel,
  words: readonly string[],
): string {
  const range = `${significant(low)} to ${significant(high)} V`;
  const kind = chemistryName(chemistry);
  // "Mine only does 13.8": held short of its charge volts it never quite fills.
  if (volts < low - overV && isSpotted(words, ['only|just|no_more_than|never_gets|matter']))
    return `That only keeps it up: ${kind} needs ${range} to fill right up, a few times a month at least.`;
  const stage = stageSaid(volts, chemistry, blocks);
  return volts > high + overV
    ? `Too high for ${kind} if it stays there: ${range} is right. Check the charger’s setting.`
    : ((isChemistryAssumed ? stage : stage?.replace('All fine:', `All fine for ${kind}:`)) ??
        `Normal while it charges: ${kind} is charged at ${range} and held at about ${significant(float)} V.`);
}

/** At the volts of a charge it takes no more than this once it is full, A of a usual battery. Common practice: 1 to 2 % of its Ah. */
const tailA = 1.5;
/** From here on, a 12 V battery, weak sun alone doesn't hold it, V. Common practice. */
const heldV = 13.45;

/** Held at the volts of a charge, or of float, it takes next to nothing. */
const isNearlyFull = ({ netCurrentA, volts = 0 }: Facts, { blocks }: ChargeLevel): boolean =>
  netCurrentA !== undefined && netCurrentA >= 0 && netCurrentA <= tailA && volts >= heldV * blocks;

function charging(
  facts: Facts,
  result: ChargeLevel,
  isJudged: boolean,
  words: readonly string[],
): readonly [string, ...string[]] {
  if (isNearlyFull(facts, result)) {
    const into = `only ${significant(present(facts.netCurrentA), 2)} A goes in`;
    return [
      `Full, or very nearly: at ${significant(present(facts.volts), 4)} V ${into}.`,
      `Held there for hours, that is how a charge ends: ${kindOf(result)} takes next to nothing once it is full.`,
    ];
  }
  const judgement = isJudged ? judgedCharge(facts, result, words) : undefined;
  const first = `It can't be told from that: ${significant(present(facts.volts), 4)} V says it is being charged, and the volts are the charger's.`;
  return [
    judgement ?? first,
    `Switch the charging off and let it rest for a few hours, loads off; full is then about ${decimals(result.fullV, 1)} V, half about ${decimals(result.halfV, 1)} V on ${kindOf(result)}.`,
    result.chemistry === 'lfp'
      ? 'For lithium a shunt monitor is the real gauge.'
      : 'On charge, it is near full when the current into it has dropped to a few amps at 14 V and more.',
  ];
}

/** Levels that lead-acid and lithium should not go below, %. */
const floors = { lead: 50, lithium: 20 } as const;

/** The same where nobody said what kind it is: what that level means on either. */
function toldOfEither({ capacityAh }: ChargeLevel, value: number): readonly [string, ...string[]] {
  const stops = `stop at ${floors.lead} % on lead-acid, at ${floors.lithium} % on lithium`;
  const judged =
    value <= floors.lithium
      ? 'low on any kind, charge it soon'
      : value <= floors.lead
        ? `too low for lead-acid (stop at ${floors.lead} %), fine on lithium (${floors.lithium} %)`
        : stops;
  if (capacityAh === undefined)
    return [
      `At ${percent(value)}: ${judged}.`,
      'Tell me its size and kind, and I’ll give the amp hours left.',
    ];
  const leftAh = (floor: number): string => plain(Math.max(0, ((value - floor) * capacityAh) / 100));
  const holds = `${plain((value * capacityAh) / 100)} Ah of ${significant(capacityAh)} Ah`;
  return [
    `${percent(value)} is ${holds}: ${leftAh(floors.lead)} Ah to use on lead-acid, ${leftAh(floors.lithium)} Ah on lithium.`,
    `${stops[0]?.toUpperCase() ?? ''}${stops.slice(1)}. Which kind is it?`,
  ];
}

function told(result: ChargeLevel): readonly [string, ...string[]] {
  const { value } = present(result.stateOfCharge);
  if (result.isChemistryAssumed) return toldOfEither(result, value);
  const kind = result.chemistry === 'lfp' ? 'lithium down to about 20 %' : 'lead-acid down to about 50 %';
  if (!result.leftAh)
    return [`At ${percent(value)}: use ${kind}. Tell me its size and I'll give the amp hours left.`];
  const heldAh = (present(result.capacityAh) * value) / 100;
  if (result.leftAh.value < 1) {
    const floor = result.chemistry === 'lfp' ? 20 : 50;
    return [
      value < 1
        ? 'It’s flat: charge it now.'
        : `It’s at ${percent(value)}: ${plain(heldAh)} Ah of ${significant(present(result.capacityAh))} Ah, not above the ${floor} % to stop at.`,
      `Use ${kind}. Charge it soon.`,
    ];
  }
  return [
    `It’s at ${percent(value)}: about ${plain(result.leftAh.value)} Ah left to use of ${significant(present(result.capacityAh))} Ah.`,
    `That’s ${kind}; it holds ${plain(heldAh)} Ah in all.`,
  ];
}

/** What more there is to say of a level. */
function advice(result: ChargeLevel): string[] {
  const lines: string[] = [];
  const { value } = present(result.stateOfCharge);
  if (result.chemistry === 'lfp')
    lines.push(
      'Lithium’s volts hardly change between 20 and 80 %, so that’s only a hint: a shunt monitor, which counts amp hours, really tells.',
    );
  if (result.state === 'load')
    lines.push(
      'A load holds the volts down; I put back what a moderate one takes. Read again after an hour at rest.',
    );
  else if (result.chemistry !== 'lfp')
    lines.push('After a night’s rest with no load that’s a fair guide, give or take ten points.');
  if (result.leftAh)
    lines.push(
      result.leftAh.value < 1
        ? 'There is nothing left to use without wearing it: charge it now.'
        : `About ${significant(result.leftAh.value, 2)} Ah are left to use.`,
    );
  else if (value < 50 && result.chemistry !== 'lfp')
    lines.push('Below half: charge it soon, it wears lead-acid.');
  return lines;
}

const chargeName = ({ chemistry }: ChargeLevel): string =>
  chemistry === 'lead-acid' ? 'AGM' : chemistryName(chemistry);

/** From here on it is called full: tables of volts differ by ten points. Common practice. */
const fullPercent = 95;

/** Whether it is asked if the battery is full, not how full it is. */
function asksWhetherFull({ parsed }: Pick<RequestContext, 'parsed'>): boolean {
  const { words } = parsed.recognised;
  const at = words.indexOf('full');
  const isHow = words.slice(Math.max(0, at - 2), at).includes('how');
  return at >= 0 && !isHow && (words.includes('?') || parsed.cues.has('ask-can-it'));
}

const ofCharging: ReadonlySet<string> = new Set('drive charge engine plug'.split(' '));

/** Whether it is asked if it should be charged: "should I drive", "do I need to charge". */
const asksToCharge = ({ parsed: { recognised } }: Pick<RequestContext, 'parsed'>): boolean =>
  recognised.words.some(word => word === 'should' || word === 'need') &&
  recognised.words.some(word => ofCharging.has(word));

/** By this many points above its floor there is no haste. */
const easyPoints = 25;

/** Charge it or not, by the level against what it should not go below. */
function shouldCharge(facts: Facts, { chemistry }: ChargeLevel, { low, value }: Range): string {
  const floor = floorPercentOf(facts, chemistry);
  if (value <= floor) return 'Yes, charge it';
  return low >= floor + easyPoints ? 'No hurry' : 'Soon';
}

/** Words that ask for a judgement of the level: "is that good?", "is 12.0 bad?". */
const judging: ReadonlySet<string> = new Set(
  'good bad ok okay fine low high alright healthy normal right worry worried flat dead killing ruined enough matter matters care wreck wrong stuffed broken faulty problem odd weird strange'.split(
    ' ',
  ),
);

const asksForJudgement = ({ parsed: { cues, recognised } }: Pick<RequestContext, 'parsed'>): boolean =>
  cues.has('ask-can-it') || recognised.words.some(word => judging.has(word));

/** So near its floor nobody can tell the two apart by volts, points. */
const atFloorPoints = 5;

/** Good, fine, low, by the level against what it should not go below. */
function judged(facts: Facts, { chemistry }: ChargeLevel, { value }: Range): string {
  const floor = floorPercentOf(facts, chemistry);
  if (value >= floor + easyPoints) return 'Good';
  if (value > floor) return 'Fine for now';
  return floor - value <= atFloorPoints ? 'At the limit' : 'Too low';
}

/** Below this a lead-acid battery at rest is as good as flat, %. Common practice. */
const flatPercent = 10;

/** What to do of one that stood flat, and how to see whether it lives. Common practice. */
const flatAdvice = [
  'Charge it right up now, where there’s air about it: each day flat costs it life. Swollen, hot or frozen, don’t.',
  'Then rest it overnight: 12.6 V or more and it may live; under 12.4 V, or gone in an hour of use, it’s done for.',
] as const;

type Verdict = 'yes' | 'tight' | 'no';
const opens: Readonly<Record<Verdict, string>> = {
  yes: 'Yes, it is full',
  tight: 'Nearly full',
  no: 'No, it is not full',
};

/** Full, nearly, or not: by the level, and by the range that the volts leave open. */
const judge = ({ value, high }: NonNullable<ChargeLevel['stateOfCharge']>): Verdict =>
  value >= fullPercent ? 'yes' : high >= fullPercent ? 'tight' : 'no';

/** Words for how full a battery is. */
export function answerChargeLevel(facts: Facts, result: ChargeLevel, setting: RequestContext): Reply {
  const { stateOfCharge: level, state } = result;
  const verdict = level && state !== 'told' && asksWhetherFull(setting) ? judge(level) : null;
  let text: readonly [string, ...string[]];
  if (!level)
    text = charging(
      facts,
      result,
      asksForJudgement(setting) && !asksWhetherFull(setting),
      setting.parsed.recognised.words,
    );
  else if (state === 'told') {
    const [first, ...rest] = told(result);
    const isJudged = asksForJudgement(setting) && !asksToCharge(setting);
    text = [isJudged ? `${judged(facts, result, level)}. ${first}` : first, ...rest];
  } else {
    const range = span(level.low, level.high, '%');
    const percents = roughly(level.value);
    const opening = verdict
      ? opens[verdict]
      : asksToCharge(setting)
        ? shouldCharge(facts, result, level)
        : asksForJudgement(setting)
          ? judged(facts, result, level)
          : undefined;
    const isFlat = state === 'rest' && result.chemistry !== 'lfp' && level.value < flatPercent;
    const read = `${significant(present(facts.volts), 4)} V ${state === 'load' ? 'under load' : 'at rest'} on ${kindOf(result)}.`;
    text = isFlat
      ? [`Flat, or nearly: about ${percents} (${range}), ${read}`, ...flatAdvice]
      : [
          opening !== undefined
            ? `${opening}: about ${percents}${verdict ? '' : ' full'} (${range}), ${read}`
            : `About ${percents} full (${range}): ${read}`,
          ...advice(result),
        ];
  }
  const [headline, ...lines] = text;
  const figures: Record<string, Figure> = level ? { stateOfCharge: figure(level, '%') } : {};
  if (result.leftAh) figures.usableCapacity = figure(result.leftAh, 'Ah');
  return {
    headline,
    lines: lines.slice(0, 3),
    verdict,
    figures,
    assumed: result.assumptions.map(({ name, value, unit, why }) => ({ name, value, unit, why })),
    working: workingOf(result.trace),
    cautions: [],
    next: [
      ...(level && level.value < 95
        ? [
            `${significant(sizeAh(facts))}Ah ${chargeName(result)} at ${decimals(state === 'told' ? level.value : Math.round(level.value / 5) * 5, 0)}%, 20A charger, how long till it's full?`,
          ]
        : []),
      'agm or lithium?',
      'show the working',
    ],
  };
}
