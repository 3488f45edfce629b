import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { duration, span } from '#answer/say.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons, workingOf } from '../figures.ts';
import type { Setting } from '../intent.ts';
import { chemistryName } from '../words.ts';
import type { ChargeLevel } from './compute.ts';

const percent = (value: number): string => `${decimals(value, 0)} %`;
/** Within what a table of volts can tell. */
const roughly = (value: number): string => percent(Math.round(value / 5) * 5);
const kindOf = (result: ChargeLevel): string =>
  result.isChemistryAssumed ? 'lead-acid (AGM or wet, as you didn’t say)' : chemistryName(result.chemistry);

function charging(facts: Facts, result: ChargeLevel): readonly [string, ...string[]] {
  return [
    `It can't be told from that: ${significant(facts.volts!, 4)} V says it is being charged, and the volts are the charger's.`,
    `Switch the charging off and let it rest for a few hours, loads off; full is then about ${decimals(result.fullV, 1)} V, half about ${decimals(result.halfV, 1)} V (${kindOf(result)}).`,
    result.chemistry === 'lfp'
      ? 'For lithium a shunt monitor is the real gauge.'
      : 'On charge, it is near full when the current into it has dropped to a few amps at 14 V and more.',
  ];
}

function told(result: ChargeLevel): readonly [string, ...string[]] {
  const { value } = result.stateOfCharge!;
  const kind = result.chemistry === 'lfp' ? 'lithium down to about 20 %' : 'lead-acid down to about 50 %';
  if (!result.leftAh)
    return [`At ${percent(value)}: use ${kind}. Tell me its size and I'll give the amp hours left.`];
  return [
    `At ${percent(value)} about ${significant(result.leftAh.value)} Ah are left to use of ${significant(result.capacityAh!)} Ah.`,
    `That is ${kind}; ${significant((result.capacityAh! * value) / 100)} Ah are in it in all.`,
  ];
}

/** What more there is to say of a level. */
function advice(result: ChargeLevel): string[] {
  const lines: string[] = [];
  const { value } = result.stateOfCharge!;
  if (result.chemistry === 'lfp')
    lines.push(
      'Lithium hardly changes its volts between 20 and 80 %, so take that as a hint only: a shunt monitor that counts amp hours tells you.',
    );
  if (result.state === 'load')
    lines.push(
      'A load holds the volts down; I put back what a moderate one takes. Read again after an hour at rest.',
    );
  else if (result.chemistry !== 'lfp')
    lines.push(
      'That holds after some hours of rest, no charge and no load; tables differ, so give or take ten points.',
    );
  if (result.leftAh)
    lines.push(
      result.leftAh.value < 1
        ? 'Nothing is left to use without wearing it: charge it now.'
        : `About ${significant(result.leftAh.value, 2)} Ah are left to use.`,
    );
  else if (value < 50 && result.chemistry !== 'lfp')
    lines.push('Below half: charge it soon, it wears lead-acid.');
  return lines;
}

/** How full it will be at the time asked about. */
function levelLater(facts: Facts, result: ChargeLevel, later: NonNullable<ChargeLevel['later']>): Reply {
  const { levelThen, used } = later.figures;
  const now = result.stateOfCharge!;
  const when = facts.until === undefined ? `in ${duration(later.hours)}` : `at ${facts.until}`;
  const isLow = levelThen.value < (result.chemistry === 'lfp' ? 20 : 50);
  const lines = [
    used.value > 0
      ? `From ${percent(now.value)} about ${significant(used.value, 2)} Ah go out in ${duration(later.hours)}, of ${significant(result.capacityAh!)} Ah.`
      : `From ${percent(now.value)}, with ${significant(facts.netCurrentA!, 2)} A going in for ${duration(later.hours)}, if that holds.`,
    result.chemistry === 'lfp'
      ? 'Lithium’s volts hardly tell it; a shunt monitor that counts amp hours does.'
      : `Rested it would read about ${decimals(later.restV, 1)} V; with loads on less.`,
    levelThen.value < 1
      ? 'It runs flat before that: use less, or charge it first.'
      : isLow
        ? `That is below ${result.chemistry === 'lfp' ? '20' : '50'} %, deeper than is good for it.`
        : '',
  ];
  return {
    headline: `About ${percent(levelThen.value)} ${when} (${span(levelThen.low, Math.min(100, levelThen.high), '%')}).`,
    lines: lines.filter(Boolean),
    verdict: null,
    figures: { stateOfCharge: figure({ ...levelThen, high: Math.min(100, levelThen.high) }, '%') },
    ...reasons(later),
    cautions: loadCautions(facts),
    next: ['how long will it last?', 'how long to charge it with a 20A charger', 'show the working'],
  };
}

/** Words for how full a battery is. */
export function answerChargeLevel(facts: Facts, result: ChargeLevel, _setting: Setting): Reply {
  const { stateOfCharge: level, state } = result;
  if (result.later) return levelLater(facts, result, result.later);
  let text: readonly [string, ...string[]];
  if (!level) text = charging(facts, result);
  else if (state === 'told') text = told(result);
  else {
    const range = span(level.low, level.high, '%');
    text = [
      `About ${roughly(level.value)} full (${range}): ${significant(facts.volts!, 4)} V ${state === 'load' ? 'under load' : 'at rest'} on ${kindOf(result)}.`,
      ...advice(result),
    ];
  }
  const [headline, ...lines] = text;
  const figures: Record<string, Figure> = level ? { stateOfCharge: figure(level, '%') } : {};
  if (result.leftAh) figures.usableCapacity = figure(result.leftAh, 'Ah');
  return {
    headline,
    lines: lines.slice(0, 3),
    verdict: null,
    figures,
    assumed: result.assumptions.map(({ name, value, unit, why }) => ({ name, value, unit, why })),
    working: workingOf(result.trace),
    cautions: [],
    next: ['how long to charge it with a 20A charger', 'agm or lithium?', 'show the working'],
  };
}
