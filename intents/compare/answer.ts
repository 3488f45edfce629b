import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { alike, duration, sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { describeBattery, describeCharger, describeLoad } from '../describe.ts';
import { figure, reasons } from '../figures.ts';
import { readingNote } from '../use.ts';
import type { Comparison, Measured } from './compute.ts';
import type { Measure, Names } from './sides.ts';

/** What the sides are called. */
export const names: Names = {
  battery: describeBattery,
  panel: ({ count, powerW }) => `${count > 1 ? `${count} × ` : ''}${plain(powerW ?? 0)} W of panel`,
  charger: describeCharger,
  load: describeLoad,
};

const amount = (measure: Measure, value: number, { brings }: Pick<Measured, 'brings'>): string => {
  if (measure === 'runTime' || measure === 'chargeTime') return duration(value);
  const ah = `about ${plain(value)} Ah`;
  if (brings === 'battery') return `${ah} once, from full`;
  if (measure === 'usableCapacity') return ah;
  return `${ah} a day`;
};

const does: Readonly<Record<Measure, string>> = {
  runTime: 'lasts',
  usableCapacity: 'has',
  dailyYield: 'makes',
  chargeTime: 'takes',
  dailyUse: 'uses',
  gain: 'brings',
};
const better: Readonly<Record<Measure, string>> = {
  runTime: 'lasts longer',
  usableCapacity: 'has more to use',
  dailyYield: 'makes more',
  chargeTime: 'is quicker',
  dailyUse: 'uses less',
  gain: 'brings more',
};
/** Characters of a first line. */
const firstLine = 100;
/** Sides nearer than this are alike for people. */
const alikeShare = 0.05;

const rangeOf = ({ found }: Measured): Range => found.figures.figure;

function headline({ measure, ranked }: Comparison): string {
  const [first, second] = ranked as [Measured, Measured];
  const [a, b] = [rangeOf(first).value, rangeOf(second).value];
  const isTime = measure === 'runTime' || measure === 'chargeTime';
  const times = isTime ? alike(a, b) : [];
  const of = (side: Measured): string =>
    (isTime ? times[side === first ? 0 : 1] : undefined) ?? amount(measure, rangeOf(side).value, side);
  if (!Number.isFinite(a) && measure === 'chargeTime')
    return 'Neither: lithium must not be charged below freezing. Warm it above 5 °C first, or wait.';
  if (a === b || Math.abs(a - b) <= alikeShare * Math.max(Math.abs(a), Math.abs(b)))
    return `Much the same: ${first.name} ${of(first)}, ${second.name} ${of(second)}.`;
  if (first.brings === 'battery' || second.brings === 'battery') {
    const [panel, battery] = first.brings === 'battery' ? [second, first] : [first, second];
    const days = rangeOf(battery).value / Math.max(rangeOf(panel).value, 1e-9);
    return days < 1
      ? `${sentence(panel.name)}, from the first day.`
      : `Away over ${duration(Math.max(24, days * 24))}, ${panel.name} gives more; under that ${battery.name}.`;
  }
  const whole = `${sentence(first.name)} ${better[measure]}: ${of(first)}, against ${of(second)} for ${second.name}.`;
  // Long names leave no room for the other's.
  return whole.length <= firstLine
    ? whole
    : `${sentence(first.name)} ${better[measure]}: ${of(first)} against ${of(second)}.`;
}

/** The figures by the side's place in the message, and under its chemistry where batteries of two kinds stand. */
function figuresOf({ measure, unit, sides, difference }: Comparison): Record<string, Figure> {
  const key = measure === 'gain' ? 'dailyGain' : measure;
  const numbered = sides.map((side, i) => [`${key}${i + 1}`, figure(rangeOf(side), unit)] as const);
  const kinds = sides.flatMap(side =>
    measure === 'usableCapacity' && side.chemistry
      ? [[`usableCapacity${sentence(side.chemistry).replace('-', '')}`, figure(rangeOf(side), unit)] as const]
      : [],
  );
  const isKnown = Number.isFinite(difference.value);
  return {
    ...Object.fromEntries([...numbered, ...kinds].filter(([, { value }]) => Number.isFinite(value))),
    ...(isKnown && { difference: figure(difference, unit) }),
  };
}

/** What of a day's use each day's gain carries. */
function carried({ ranked, usedAh }: Comparison): string {
  const daily = ranked.find(({ brings }) => brings !== undefined && brings !== 'battery');
  if (!daily || usedAh === undefined || usedAh <= 0) return '';
  const percent = (100 * rangeOf(daily).value) / usedAh;
  return percent >= 100
    ? `You use about ${plain(usedAh)} Ah a day: ${daily.name} carries all of it.`
    : `You use about ${plain(usedAh)} Ah a day: ${daily.name} carries ${decimals(percent, 0)} % of it.`;
}

/** What batteries of two kinds weigh, which may settle it. */
function weights({ ranked }: Comparison): string {
  const isUnlike = new Set(ranked.map(side => side.chemistry)).size > 1;
  if (!isUnlike || ranked.length !== 2 || ranked.some(side => side.weightKg === undefined)) return '';
  const [first, second] = ranked.map(side => `${side.name} about ${plain(present(side.weightKg))} kg`);
  return `Weight: ${first}, ${second}.`;
}

/** Cautions that go with what is chosen between. */
function hurts({ sides, measure }: Comparison): CautionCode[] {
  const isLithium = sides.some(side => side.chemistry === 'lfp');
  if (measure === 'gain') return ['fuse-at-battery'];
  if (measure === 'runTime' || measure === 'usableCapacity') return isLithium ? ['lithium-cold'] : [];
  return measure === 'dailyUse' ? [] : ['fuse-at-battery'];
}

/** The figure of each side, the better first, and the difference. */
export function answerComparison(facts: Facts, comparison: Comparison): Reply {
  const { measure, ranked } = comparison;
  const isOnce = ranked.some(({ brings }) => brings === 'battery');
  const others = (isOnce ? ranked : ranked.slice(2)).map(
    side => `${sentence(side.name)} ${does[measure]} ${amount(measure, rangeOf(side).value, side)}.`,
  );
  return {
    headline: headline(comparison),
    lines: [
      ...others,
      measure === 'runTime' ? (readingNote(facts) ?? '') : '',
      carried(comparison),
      weights(comparison),
    ]
      .filter(Boolean)
      .slice(0, 4),
    verdict: null,
    figures: { ...figuresOf(comparison), better: { value: present(ranked[0]).name } },
    ...reasons(present(ranked[0]).found),
    cautions:
      Number.isFinite(rangeOf(present(ranked[0])).value) || measure !== 'chargeTime'
        ? [...loadCautions(facts), ...hurts(comparison)]
        : ['lithium-cold'],
    next: ['show the working'],
  };
}
