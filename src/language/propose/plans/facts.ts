import type { Mention } from '../../recognise/mention.ts';
import { driveWords, noneWords, notWords, skySigns, stayWords } from '../../words/en/day-plans.ts';
import type { DayKey, Fact } from './symbol.ts';

const mostHours = 24;
const topicReach = 6;
const skyFillers: ReadonlySet<string> = new Set(['and', 'n', 'an', '&', '+', '/', 'with', 'some', 'bit', 'bits', 'of', 'a', 'half', 'part', 'in', 'out', 'partly', 'then', 'some']);
const skyJoins: ReadonlySet<string> = new Set(['and', 'n', 'an', '&', '+', '/', 'with', 'bit', 'half', 'out', 'part']);

const fact = (from: number, to: number, key: DayKey | undefined, value: number | string, more: Partial<Fact> = {}): Fact => ({ kind: 'fact', from, to, key, value, isTold: key !== undefined, ...more });

/** The sky that a mention names by itself. */
const skyOf = (m: Mention | undefined): string | undefined =>
  m?.kind === 'sky' ? m.key : m?.kind === 'sign' && Object.hasOwn(skySigns, m.text) ? skySigns[m.text] : m?.kind === 'word' && m.text === 'mix' ? 'mixed' : undefined;

/** The sky told from a mention on: "sunny", "sun and cloud", "mixed cloud", "bit of sun bit of cloud". */
export function skyAt(mentions: readonly Mention[], at: number, isDay: (i: number) => boolean): Fact | undefined {
  let sky = skyOf(mentions[at]);
  if (!sky) return undefined;
  let to = at + 1;
  for (;;) {
    let next = to;
    let isJoined = false;
    while (next < mentions.length && next - to < 5 && skyFillers.has(mentions[next]!.text) && !mentions[next]!.isNewLine) {
      if (skyJoins.has(mentions[next]!.text)) isJoined = true;
      next++;
    }
    const more = skyOf(mentions[next]);
    if (!more || isDay(next) || mentions[next]!.isNewLine) break;
    const isPart = mentions[next]!.kind === 'sign' || mentions[to - 1]!.kind === 'sign';
    const isWord = /^(?:sun|clouds?|sunny|sky|skies)$/.test(mentions[next]!.text);
    if (next === to) {
      if (sky === more && (isPart || mentions[next]!.text !== mentions[to - 1]!.text)) to++;
      else if (sky === 'mixed' && isWord) to++;
      else if (sky === 'mixed' && isPart) to++;
      else break;
    } else if (mentions[to]!.text === '/' && (next > to + 1 || sky === more || mentions[next + 1]?.text === '/' || mentions[at - 1]?.text === '/')) break;
    else if (isJoined || mentions[to]!.text === 'of') {
      sky = sky === more ? sky : 'mixed';
      to = next + 1;
    } else break;
  }
  return fact(at, to, 'sky', mentions.slice(to, to + 1).some(m => m.text === 'mixed' && m.kind === 'sky') && to - at > 1 ? 'mixed' : sky);
}

const isHours = (m: Mention | undefined): m is Mention => m?.kind === 'amount' && m.dimension === 'time' && (m.unit === 'h' || m.unit === 'min');

export interface Scope {
  readonly mentions: readonly Mention[];
  /** How strongly a mention parts what is around it: 0 not at all. */
  readonly stops: readonly number[];
  /** Words of a topic that hours have taken already. */
  readonly taken: Set<number>;
}

const isGenerator = (m: Mention): boolean => (m.kind === 'charger' && m.key === 'generator') || m.text === 'generator';
const isLoad = (m: Mention): boolean => (m.kind === 'thing' && m.cls === 'thing') || m.kind === 'inverter' || m.kind === 'mains';

/** What the words around a mention say its hours are of: a key, "load", or nothing. */
function topicOf({ mentions, stops, taken }: Scope, at: number, reach = topicReach): DayKey | 'load' | undefined {
  let best: { readonly key: DayKey | 'load'; readonly cost: number; readonly i: number } | undefined;
  for (const step of [-1, 1])
    for (let d = 1; d <= reach; d++) {
      const i = at + step * d;
      const m = mentions[i];
      if (!m || stops[step < 0 ? i : i]! > 0 || (step > 0 && m.isNewLine) || isHours(m)) break;
      const key = isGenerator(m) ? 'generatorH' : m.kind === 'without' ? undefined : (m.kind === 'word' || m.kind === 'noun' || m.kind === 'alternator' || m.kind === 'thing') && driveWords.has(m.text) ? 'drivingH' : m.kind === 'noun' && driveWords.has(m.text.split(' ').at(-1)!) ? 'drivingH' : isLoad(m) ? 'load' : undefined;
      const cost = d + (taken.has(i) ? 5 : 0) + (step > 0 ? 0.5 : 0);
      if (key && (!best || cost < best.cost)) best = { key, cost, i };
      if (step < 0 && m.isNewLine) break;
    }
  if (best && best.key !== 'load') taken.add(best.i);
  return best?.key;
}

/** What the sentence before a mention speaks of, past commas: "we run the generator once, 3 hours". */
function topicBefore({ mentions, stops }: Scope, at: number): DayKey | undefined {
  for (let i = at - 1; i >= Math.max(0, at - 12) && stops[i]! < 3 && !mentions[i + 1]!.isNewLine; i--) {
    const m = mentions[i]!;
    if (isHours(m)) return undefined;
    if (isGenerator(m)) return 'generatorH';
    if (m.kind === 'word' && driveWords.has(m.text)) return 'drivingH';
  }
  return undefined;
}

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
  if (to === at + 1 && m.unit === 'h' && minutes?.kind === 'number' && minutes.told >= 5 && minutes.told < 60 && minutes.told % 5 === 0 && !minutes.isNewLine && (!end || end.isNewLine || scope.stops[at + 2]! > 0 || driveWords.has(end.text))) {
    value = m.value + minutes.told / 60;
    to = at + 2;
  }
  if (value > mostHours) return 'load';
  const rate = mentions[at]!.rate;
  const rateMention = [mentions[to], mentions[to + 1], mentions[at - 1]].find(o => o?.kind === 'rate');
  const topic = topicOf(scope, at);
  const isAfter = rateMention?.text === 'the day' && mentions.slice(to, to + 3).some(o => o.text === 'after');
  if (rate && !isAfter && !(rateMention && /^(?:each|every) (?!hour)/.test(rateMention.text) && topic === 'generatorH')) return 'load';
  if (topic === 'load') return 'load';
  const isWay = ways.has(mentions[to]?.text ?? '');
  return fact(at, to, topic ?? (isWay ? 'drivingH' : topicBefore(scope, at)), value);
}

/** "None", "nothing", "zero", "0": nothing of what was told of the other days. */
export function noneAt(scope: Scope, at: number): Fact | undefined {
  const { mentions, stops } = scope;
  const m = mentions[at]!;
  if (m.kind === 'number' && m.told === 0) {
    const key = topicOf(scope, at, 2);
    return key === 'load' ? undefined : fact(at, at + 1, key, 0);
  }
  if (m.kind !== 'word' && m.kind !== 'noun') return undefined;
  if (!noneWords.has(m.text)) return undefined;
  if (m.text === 'no' || m.text === 'not' || m.text === 'off' || m.text === 'zero') {
    const next = mentions[at + 1];
    if (next && stops[at + 1] === 0 && !next.isNewLine && next.text !== 'at' && next.text !== '(' && next.kind !== 'clock' && next.kind !== 'weekday') return undefined;
  }
  const key = topicOf(scope, at, 2);
  return key === 'load' ? undefined : fact(at, at + 1, key, 0, { isSoft: key === undefined });
}

/** "Without driving", "no genny", "parked", "camp". */
export function restingAt(mentions: readonly Mention[], at: number): Fact | undefined {
  const m = mentions[at]!;
  if (m.kind === 'without' && m.key === 'driving') return fact(at, at + 1, 'drivingH', 0);
  if (m.kind === 'without' && m.key === 'generator') return fact(at, at + 1, 'generatorH', 0);
  if (m.kind === 'word' && notWords.has(m.text))
    for (let i = at + 1; i <= at + 4; i++) {
      const o = mentions[i];
      if (!o || o.kind !== 'word') break;
      if (driveWords.has(o.text) || o.text === 'stir' || o.text === 'budge') return fact(at, i + 1, 'drivingH', 0);
    }
  if ((m.kind === 'word' || m.kind === 'noun' || m.kind === 'weekday') && stayWords.has(m.text)) return fact(at, at + 1, 'drivingH', 0, { isSoft: true });
  return undefined;
}

/** Hours one way. */
const ways: ReadonlySet<string> = new Set(['back', 'home', 'there', 'out', 'up', 'down']);
const tails: ReadonlySet<string> = new Set(['back', 'home', 'again', 'there', 'only', 'and', 'on', 'or', 'returning', 'the', 'more', 'down', 'up']);

/** A bare number that may be hours as those told before: "then 2", "4 wed", "drive 3". */
export function bareHoursAt({ mentions, stops }: Scope, at: number): Fact | undefined {
  const m = mentions[at]!;
  if (m.kind !== 'number' || m.told <= 0 || m.told > 16 || m.isNegative) return undefined;
  if (/^[-/]$/.test(mentions[at - 1]?.text ?? '')) return undefined;
  const next = mentions[at + 1];
  const isEnd = !next || stops[at + 1]! > 0 || next.isNewLine || tails.has(next.text) || next.kind === 'weekday' || next.kind === 'clock' || next.kind === 'sky' || next.text === 'sun';
  if (!isEnd) return undefined;
  for (let d = 1; d <= 4; d++) {
    const b = mentions[at - d];
    if (!b || stops[at - d]! > 0) break;
    if (isLoad(b) || b.kind === 'battery' || b.kind === 'chemistry' || b.kind === 'solar' || b.kind === 'amount' || b.kind === 'charger' || b.text === 'x') return undefined;
  }
  return fact(at, at + 1, undefined, m.told, { isSoft: false });
}
