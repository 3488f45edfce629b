import { present } from '#basics/present.ts';
import { weekdays } from '../words/en/calendar.ts';
import type { Mention, Variant } from './mention.ts';

/** What stands between the ends of a range. */
const ranges: ReadonlySet<string> = new Set(['-', 'to', 'or', 'till']);

const isTime = (m: Mention | undefined): m is Mention => m?.kind === 'amount' && m.dimension === 'time';

/** Adds what an amount may mean together with its neighbours: ranges, "1 h 30", spans of the clock, rates. */
export function joined(mentions: readonly Mention[]): readonly Mention[] {
  return mentions.map((m, i) => {
    // Only figures and times take part.
    if (m.kind !== 'amount' && m.kind !== 'number' && m.kind !== 'clock') return m;
    let out = m;
    const variants: Variant[] = [...m.variants];
    if (m.kind === 'amount' || m.kind === 'number') {
      const sep = mentions[i - 1];
      const low = mentions[i - 2];
      const isSpanned =
        sep !== undefined &&
        (ranges.has(sep.text) || (sep.text === 'and' && mentions[i - 3]?.text === 'between'));
      const isRange = isSpanned && low?.kind === 'number' && low.told < m.told && low.told > 0;
      if (isRange) {
        const scale = m.told === 0 ? 1 : m.value / m.told;
        variants.push({
          why: 'range',
          value:
            m.dimension === 'temperature'
              ? m.value - (m.told - low.told) / 2
              : ((low.told + m.told) / 2) * scale,
        });
      }
      const sameUnit =
        isSpanned &&
        low?.kind === 'amount' &&
        low.unit === m.unit &&
        low.unit !== undefined &&
        low.value < m.value;
      if (sameUnit) variants.push({ why: 'range', value: (low.value + m.value) / 2 });
      if (isTime(m)) {
        const direct = mentions[i - 1];
        const first = isTime(direct)
          ? direct
          : (sep?.text === 'and' || sep?.text === ',') && isTime(low)
            ? low
            : undefined;
        if (first && first.unit === 'h' && m.unit === 'min')
          variants.push({ why: 'joined', value: first.value + m.value });
        if (first && first.unit === 'days' && m.unit === 'h')
          variants.push({ why: 'joined', value: first.value + m.value });
      }
      if (
        m.kind === 'number' &&
        isTime(mentions[i - 1]) &&
        present(mentions[i - 1]).unit === 'h' &&
        m.told < 60 &&
        m.told >= 5
      )
        variants.push({ why: 'joined', value: present(mentions[i - 1]).value + m.told / 60 });
      for (const value of withTimeBefore(mentions, i)) variants.push({ why: 'sum', value });
      // "4 goes of 5 minutes", "twice a day for 10 min": as often as told.
      // "2.1 kWh a week": of a day.
      if (
        (m.dimension === 'energy' || m.dimension === 'charge' || m.dimension === 'time') &&
        isAWeek(mentions, i)
      )
        variants.push({ why: 'joined', value: m.value / 7 });
      const times = timesNear(mentions, i);
      if (isTime(m) && m.value < 24)
        for (const count of times) variants.push({ why: 'times', value: m.value * count, count });
      const rate = rateOf(mentions, i);
      if (rate) out = { ...out, rate };
    }
    if (m.kind === 'number')
      for (const value of sharesOf(mentions, i)) variants.push({ why: 'share', value });
    for (const value of [...spansTo(mentions, i), ...spansOfHour(mentions, i)])
      variants.push({ why: 'span', value });
    return variants.length > 0 && variants.length !== m.variants.length ? { ...out, variants } : out;
  });
}

const additions: ReadonlySet<string> = new Set(['and', '+', '&', 'plus', 'n', 'then']);
/** How far back a time is looked for that one may be added to. */
const sumReach = 8;

/**
 * Hours of a time together with one told before: "half an hour in the morning and half an hour in the evening",
 * "40 minutes there and 40 back", where the second leaves its unit out and may stand alone as well.
 */
function withTimeBefore(mentions: readonly Mention[], at: number): number[] {
  const m = present(mentions[at]);
  const isBare = m.kind === 'number' && m.told > 0 && m.told < 60;
  if (!isBare && !(isTime(m) && m.value < 24)) return [];
  let isJoined = false;
  for (let i = at - 1; i >= Math.max(0, at - sumReach); i--) {
    const other = present(mentions[i]);
    if (additions.has(other.text)) isJoined = true;
    // Another thing has hours of its own.
    if (other.kind === 'number' || other.kind === 'thing' || other.kind === 'noun') return [];
    if (!isTime(other)) continue;
    if (!isJoined || other.value >= 24 || (other.unit !== 'min' && other.unit !== 'h')) return [];
    const value = isBare ? (m.told * other.value) / other.told : m.value;
    return isBare ? [value, other.value + value] : [other.value + value];
  }
  return [];
}

/** What half of an amount told before may be called: "half that", "half of that", "only half as long". */
const likeBefore = /^(?:that|those|so|as|it)$/;
/** How many amounts before are thought of, and how far off they may stand. */
const mostShared = 2;
const shareReach = 24;

/** A share of what was told before: "Tess says 20 hours, her brother half that". */
function sharesOf(mentions: readonly Mention[], at: number): number[] {
  const { told } = present(mentions[at]);
  if (told <= 0 || told >= 1) return [];
  const next = mentions[at + 1]?.text === 'of' ? at + 2 : at + 1;
  const isWhole = mentions[at - 1]?.text === 'the' && mentions[at + 1]?.kind === 'sign';
  if (!isWhole && !likeBefore.test(mentions[next]?.text ?? '')) return [];
  const out: number[] = [];
  for (let i = at - 1; i >= Math.max(0, at - shareReach) && out.length < mostShared; i--) {
    const other = present(mentions[i]);
    if (other.kind === 'amount' && other.unit !== undefined && other.dimension !== 'other')
      out.push(other.told * told);
  }
  return out;
}

/** Whether an amount is told of a week: "2.1 kWh a week", "14 hours in the week", "weekly 21 hours". */
function isAWeek(mentions: readonly Mention[], at: number): boolean {
  if (mentions[at - 1]?.text === 'weekly' || mentions[at + 1]?.text === 'weekly') return true;
  return mentions
    .slice(at + 1, at + 4)
    .some(o => (o.kind === 'rate' && o.key === 'week') || (/^1weeks?$/.test(o.cls) && o.told === 1));
}

const untilWords = /^(?:to|-|till|til|until|tae|thru|through|and|finishing|ending|off|finish|ends)$/;

/** What stands between two bare hours: "8 to 11", "6-10". */
const spanWords: ReadonlySet<string> = new Set(['to', '-', 'thru', 'through']);

const startWords = /^(?:on|start|starts|starting|open|opens)$/;
const endWords = /^(?:off|finish|finishes|ends|ending)$/;

/** The hour that a time or a bare number is: "6.30" is half past six. */
const hourOf = (m: Mention): number => {
  const minutes = m.kind === 'number' ? /^\d{1,2}[.](\d\d)$/.exec(m.text)?.[1] : undefined;
  return minutes === undefined || Number(minutes) >= 60
    ? m.value
    : Math.floor(m.value) + Number(minutes) / 60;
};

/** Whether a time of the clock says which half of the day it is in: "7am", "19:00", not "till 6". */
const isOfOneHalf = (m: Mention): boolean =>
  m.kind === 'clock' && m.cls === 'clock' && (/[ap]m/.test(m.key) || m.value >= 13);

/** Hours from a time told a little before to this one: "10pm to 6am", "7 till 10", "from 6 at night to 6". */
function spansTo(mentions: readonly Mention[], at: number): number[] {
  const m = present(mentions[at]);
  const isHour = (o: Mention | undefined): o is Mention =>
    (o?.kind === 'clock' && Number.isFinite(o.value)) || (o?.kind === 'number' && o.told > 0 && o.told <= 24);
  if (!isHour(m)) return [];
  let sep = -1;
  for (let i = at - 1; i >= Math.max(0, at - 2); i--) if (untilWords.test(present(mentions[i]).text)) sep = i;
  if (sep < 0) return m.kind === 'clock' ? spansFromClock(mentions, at) : [];
  let low: Mention | undefined;
  for (let i = sep - 1; i >= Math.max(0, sep - 4); i--)
    if (isHour(mentions[i])) {
      low = mentions[i];
      break;
    }
  // Both without a word of time: "8 to 11" is a span beside nothing that says otherwise, and they stand side by side.
  const areBare = low?.kind === 'number' && m.kind === 'number';
  const isLed =
    !areBare ||
    (mentions[at - 2] === low && spanWords.has(present(mentions[sep]).text)) ||
    mentions.slice(Math.max(0, at - 5), at).some(o => /^(?:from|till|til|until|between)$/.test(o.text)) ||
    // "On at 7 and off at 1".
    (endWords.test(present(mentions[sep]).text) &&
      mentions.slice(Math.max(0, sep - 6), sep).some(o => startWords.test(o.text)));
  if (!low || !isLed) return m.kind === 'clock' ? spansFromClock(mentions, at) : [];
  const out = new Set<number>();
  const days = dayOf(m) - dayOf(low);
  if (days > 0 || days < 0) return [((days + 7) % 7) * 24 + m.value - low.value];
  // Both with their half of the day: there is one span.
  const isPlain = isOfOneHalf(m) && isOfOneHalf(low);
  for (const shift of isPlain ? [0] : [0, 12, -12, 24]) {
    const value = (hourOf(m) - hourOf(low) + shift + 48) % 24;
    if (value > 0 && value <= 20) out.add(Math.round(value * 100) / 100);
  }
  // "One. Music till midnight": the number may be no hour at all.
  if (low.kind === 'number' && mentions[sep - 1] !== low && m.kind === 'clock')
    for (const value of spansFromClock(mentions, at)) out.add(value);
  return [...out];
}

/** Hours between a time of the clock and a bare number that is told as one: "9 in the evening; departure at 7", "it's 11 now". */
function spansOfHour(mentions: readonly Mention[], at: number): number[] {
  const m = present(mentions[at]);
  if (m.kind !== 'number' || !Number.isInteger(m.told) || m.told < 1 || m.told > 12) return [];
  const isNow = mentions[at + 1]?.text === 'now';
  if (!isNow && mentions[at - 1]?.text !== 'at') return [];
  const out = new Set<number>();
  for (const { kind, value } of mentions) {
    if (kind !== 'clock' || !Number.isFinite(value)) continue;
    for (const half of [0, 12]) {
      const hours = ((isNow ? value - m.told : m.told - value) + half + 48) % 24;
      if (hours > 0 && hours <= mostNamed) out.add(Math.round(hours * 100) / 100);
    }
    if (out.size >= 2 * mostOthers) break;
  }
  return [...out];
}

const dayOf = (m: Mention): number => {
  for (const word of m.key.split(' ')) if (Object.hasOwn(weekdays, word)) return weekdays[word]!;
  return Number.NaN;
};

/** The longest span, h, that is thought of where an hour is told without its half of the day. */
const mostNamed = 20;

/** How many other times of a message are held against one. */
const mostOthers = 3;

/** Hours from another time of the clock to this one: "it's 10pm now, the party goes till 2am", "till 6am, 9pm now". */
function spansFromClock(mentions: readonly Mention[], at: number): number[] {
  const m = present(mentions[at]);
  if (!Number.isFinite(m.value)) return [];
  const out = new Set<number>();
  let seen = 0;
  for (let i = 0; i < mentions.length && seen < mostOthers; i++) {
    const other = present(mentions[i]);
    if (i === at || other.kind !== 'clock' || !Number.isFinite(other.value)) continue;
    if (m.cls !== 'clock' && other.cls !== 'clock') continue;
    seen++;
    const days = dayOf(m) - dayOf(other);
    const hours = m.value - other.value;
    const value = days > 0 || days < 0 ? ((days + 7) % 7) * 24 + hours : (hours + 24) % 24;
    if (value > 0) out.add(Math.round(value * 100) / 100);
  }
  return [...out];
}

const timesWords: Readonly<Record<string, number>> = { twice: 2, thrice: 3 };

const eachTime = /^(?:a (?:go|time|pop|piece|shot|cup|feed|use)|each|apiece|per)\b/;
const [nearTimes, farTimes] = [7, 14];

/** How many times something is done, told within a few words: "4 cups", "3 times", "twice". */
function timesNear(mentions: readonly Mention[], at: number): number[] {
  const out = new Set<number>();
  // "5 feeds … twelve minutes a go": what says that it is one of several looks farther back, and so does "three times".
  const isEach = eachTime.test(`${mentions[at + 1]?.text} ${mentions[at + 2]?.text}`);
  for (let i = Math.max(0, at - farTimes); i < Math.min(mentions.length, at + 8); i++) {
    const m = present(mentions[i]);
    if (i === at || (i < at - nearTimes && !isEach && mentions[i + 1]?.text !== 'times')) continue;
    if (m.kind === 'number' && Number.isInteger(m.told) && m.told >= 2 && m.told <= 20) out.add(m.told);
    if (m.kind === 'word' && Object.hasOwn(timesWords, m.text)) out.add(timesWords[m.text]!);
  }
  return [...out];
}

/** A rate that belongs to an amount: right after it, or one word on. */
function rateOf(mentions: readonly Mention[], at: number): Mention['rate'] {
  for (let i = at + 1; i <= at + 2 && i < mentions.length; i++) {
    const m = present(mentions[i]);
    if (m.kind === 'rate') return m.key as Mention['rate'];
    if (m.kind === 'sign' && m.text !== '(' && m.text !== '/') return undefined;
    if (m.kind === 'amount' || m.kind === 'number') return undefined;
  }
  const before = mentions[at - 1];
  return before?.kind === 'rate' ? (before.key as Mention['rate']) : undefined;
}
