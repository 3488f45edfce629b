import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import { driveWords, hourTails, noneWords, notWords, stayWords, wayWords } from '../../words/en/day-plans.ts';
import { type Fact, fact } from './symbol.ts';
import { isHours, isLoad, type Scope, topicBefore, topicOf } from './topics.ts';

const mostHours = 24;
/** Hours of driving or of the generator, or hours that say not what of. */
export function hoursAt(scope: Scope, at: number, markEnd: number): Fact | 'load' | undefined {
  const { mentions } = scope;
  const m = mentions[at];
  if (!isHours(m)) return undefined;
  let to = at + 1;
  // "Day 1 - 4 h" is no range.
  let value = (at - 2 >= markEnd ? m.variants.find(v => v.why === 'range')?.value : undefined) ?? m.value;
  for (const i of [at + 1, at + 2]) {
    const joined = mentions[i]?.variants.find(v => v.why === 'joined');
    if (joined && m.unit === 'h') {
      value = joined.value;
      to = i + 1;
    }
  }
  // "2 h 30".
  const minutes = mentions[at + 1];
  const end = mentions[at + 2];
  if (
    to === at + 1 &&
    m.unit === 'h' &&
    minutes?.kind === 'number' &&
    minutes.told >= 5 &&
    minutes.told < 60 &&
    minutes.told % 5 === 0 &&
    !minutes.isNewLine &&
    (!end || end.isNewLine || scope.stops[at + 2]! > 0 || driveWords.has(end.text))
  ) {
    value = m.value + minutes.told / 60;
    to = at + 2;
  }
  if (value > mostHours) return 'load';
  const rate = present(mentions[at]).rate;
  const rateMention = [mentions[to], mentions[to + 1], mentions[at - 1]].find(o => o?.kind === 'rate');
  const topic = topicOf(scope, at);
  const isAfter = rateMention?.text === 'the day' && mentions.slice(to, to + 3).some(o => o.text === 'after');
  const isEach =
    rateMention !== undefined && /^(?:each|every) (?!hour)/.test(rateMention.text) && topic === 'generatorH';
  const isDaily = rate !== undefined && !isAfter && !isEach;
  if (topic === 'load' || (isDaily && (rate !== 'day' || !topic))) return 'load';
  const isWay = wayWords.has(mentions[to]?.text ?? '');
  return fact(
    at,
    to,
    topic ?? (isWay ? 'drivingH' : topicBefore(scope, at)),
    value,
    isDaily ? { isDaily } : {},
  );
}

/** "None", "nothing", "zero", "0": nothing of what was told of the other days. */
export function noneAt(scope: Scope, at: number): Fact | undefined {
  const { mentions, stops } = scope;
  const m = present(mentions[at]);
  if (m.kind === 'number' && m.told === 0) {
    const key = topicOf(scope, at, 2);
    return key === 'load' ? undefined : fact(at, at + 1, key, 0);
  }
  if (m.kind !== 'word' && m.kind !== 'noun') return undefined;
  if (!noneWords.has(m.text)) return undefined;
  if (m.text === 'no' || m.text === 'not' || m.text === 'off' || m.text === 'zero') {
    const next = mentions[at + 1];
    if (
      next &&
      stops[at + 1] === 0 &&
      !next.isNewLine &&
      next.text !== 'at' &&
      next.text !== 'on' &&
      next.text !== 'day' &&
      next.text !== '(' &&
      next.kind !== 'clock' &&
      next.kind !== 'weekday'
    )
      return undefined;
  }
  const key = topicOf(scope, at, 2);
  return key === 'load' ? undefined : fact(at, at + 1, key, 0, { isSoft: key === undefined });
}

/** What a battery is asked to stay: "will it stay above 50?" */
const staysAt: ReadonlySet<string> = new Set([
  'above',
  'over',
  'inside',
  'alive',
  'up',
  'charged',
  'cold',
  'under',
  'below',
  'that',
]);

/** "Without driving", "no genny", "parked", "camp". */
export function restingAt(mentions: readonly Mention[], at: number): Fact | undefined {
  const m = present(mentions[at]);
  if (m.kind === 'without' && m.key === 'driving') return fact(at, at + 1, 'drivingH', 0);
  if (m.kind === 'without' && m.key === 'generator') return fact(at, at + 1, 'generatorH', 0);
  if (m.kind === 'word' && notWords.has(m.text))
    for (let i = at + 1; i <= at + 4; i++) {
      const o = mentions[i];
      if (o?.kind !== 'word') break;
      if (driveWords.has(o.text) || o.text === 'stir' || o.text === 'budge')
        return fact(at, i + 1, 'drivingH', 0);
    }
  if (
    (m.kind === 'word' || m.kind === 'noun' || m.kind === 'weekday') &&
    stayWords.has(m.text) &&
    !(m.text === 'stay' && staysAt.has(mentions[at + 1]?.text ?? ''))
  )
    return fact(at, at + 1, 'drivingH', 0, { isSoft: true });
  return undefined;
}

/** A bare number that may be hours as those told before: "then 2", "4 wed", "drive 3". */
export function bareHoursAt({ mentions, stops }: Scope, at: number): Fact | undefined {
  const m = present(mentions[at]);
  if (m.kind !== 'number' || m.told <= 0 || m.told > 16 || m.isNegative) return undefined;
  if (/^[-/]$/.test(mentions[at - 1]?.text ?? '')) return undefined;
  const next = mentions[at + 1];
  const isEnd =
    !next ||
    stops[at + 1]! > 0 ||
    next.isNewLine ||
    hourTails.has(next.text) ||
    next.kind === 'weekday' ||
    next.kind === 'clock' ||
    next.kind === 'sky' ||
    next.text === 'sun';
  if (!isEnd) return undefined;
  for (let d = 1; d <= 4; d++) {
    const b = mentions[at - d];
    if (!b || stops[at - d]! > 0) break;
    if (
      isLoad(b) ||
      b.kind === 'battery' ||
      b.kind === 'chemistry' ||
      b.kind === 'solar' ||
      (b.kind === 'amount' && b.dimension !== 'time') ||
      b.kind === 'charger' ||
      b.text === 'x'
    )
      return undefined;
  }
  const isDrive = /^(?:drive|driving|drove)$/.test(mentions[at - 1]?.text ?? '');
  return fact(at, at + 1, isDrive ? 'drivingH' : undefined, m.told);
}
