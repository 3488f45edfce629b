import type { Reply } from '#answer/reply.ts';
import { span } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { figure } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { levelByVolts } from '../level.ts';
import { isSpotted } from '../spotting.ts';
import { chemistryName } from '../words.ts';
import type { ChargeLevel } from './compute.ts';

/** How a level off a screen is told. */
const onScreens: ReadonlySet<string> = new Set(['%', 'percent', 'percentage', 'per', 'pc', 'soc']);

/** Words of what shows a per cent. */
const counters = [
  'monitor|shunt|meter|screen|display|app|gauge|says|shows|reads|showing|reading|bms|bluetooth',
];

/** By so many points a screen may differ from what the volts leave open before one of them is wrong: lithium’s hardly move. Common practice. */
const slackPoints = { lead: 10, lithium: 20 } as const;

/** Whether a level told goes with one that volts leave open. */
export const isNearVolts = (percent: number, { low, high }: Range, isLithium: boolean): boolean => {
  const points = isLithium ? slackPoints.lithium : slackPoints.lead;
  return percent >= low - points && percent <= high + points;
};

/** Words for a per cent on a screen beside volts, both told: which of them to believe; undefined where only one is told. */
export function answerAgainst(
  facts: Facts,
  result: ChargeLevel,
  { parsed }: RequestContext,
): Reply | undefined {
  const percent = parsed.facts.batteries?.find(
    b => b.stateOfChargePercent !== undefined,
  )?.stateOfChargePercent;
  const { volts } = facts;
  // "Full at 12.4 V?" asks whether it is; a screen shows per cent.
  if (!parsed.recognised.words.some(word => onScreens.has(word))) return undefined;
  if (percent === undefined || parsed.facts.volts === undefined || volts === undefined) return undefined;
  const isLoaded = result.state === 'load';
  const of = (chemistry: Chemistry): Range => levelByVolts(volts, chemistry, result.blocks, isLoaded);
  const read = `${significant(volts, 4)} V ${isLoaded ? 'under load' : 'at rest'}`;
  const lithium = of('lfp');
  const screen = `${decimals(percent, 0)} %`;
  const isCounted = isSpotted(parsed.recognised.words, counters);
  const lines = [
    ...(isCounted
      ? [
          'A shunt’s percent drifts until it is set at full: charge right up and set it to 100 %, and check the Ah it was told.',
        ]
      : []),
    'Volts count only after an hour or more with nothing on and nothing charging.',
  ];
  // Volts that hold lead-acid on charge may be lithium at rest; where nobody said which it is, it may be that which fits.
  const isLeadOut = !result.stateOfCharge || !isNearVolts(percent, result.stateOfCharge, false);
  const isEither =
    result.isChemistryAssumed && isLeadOut && (!result.stateOfCharge || isNearVolts(percent, lithium, true));
  if (!result.stateOfCharge && !isEither)
    return {
      headline: `The volts can’t say: at ${significant(volts, 4)} V it’s being charged. Go by the ${screen} for now.`,
      lines,
      verdict: null,
    };
  const level = isEither ? lithium : present(result.stateOfCharge);
  const kind = isEither
    ? 'lithium'
    : result.isChemistryAssumed
      ? 'lead-acid'
      : chemistryName(result.chemistry);
  const range = span(level.low, level.high, '%');
  if (!isCounted && isNearVolts(percent, level, kind === 'lithium'))
    return {
      headline:
        kind === 'lithium'
          ? `${screen} could be, no more: ${read} on lithium is anything from ${decimals(level.low, 0)} to ${decimals(level.high, 0)} %.`
          : `${screen} fits: ${read} on ${kind} is ${span(level.low, level.high, '%')}.`,
      lines: [
        ...(kind === 'lithium'
          ? ['Lithium’s volts hardly move from 20 to 90 %: only a shunt that counts amp hours tells.']
          : []),
        ...lines,
      ],
      verdict: null,
      figures: { stateOfCharge: figure(level, '%') },
      next: ['what is a shunt?'],
    };
  const agrees = isNearVolts(percent, level, isEither || result.chemistry === 'lfp');
  return {
    headline: !agrees
      ? `The volts: ${read} on ${kind} is ${range}, so ${screen} looks wrong.`
      : percent >= level.low && percent <= level.high
        ? `They agree: ${read} on ${kind} is ${range}, so ${screen} is likely right.`
        : `Near enough: ${read} on ${kind} is ${range}, and that’s only a hint.`,
    lines: [
      ...(isEither ? ['On lead-acid they wouldn’t go together. Which kind is it?'] : []),
      ...lines,
    ].slice(0, 3),
    verdict: null,
    figures: { stateOfCharge: figure(level, '%') },
    next: ['what is a shunt?'],
  };
}
