import type { Mention } from '../recognise/mention.ts';

/** One day of a plan, as told. */
export interface PlanDay {
  drivingH?: number;
  sky?: string;
  generatorH?: number;
}

/** A plan that a message tells day by day, and which mentions tell it. */
export interface Plan {
  readonly days: readonly PlanDay[];
  readonly used: readonly number[];
  /** How its days were marked: "numbers", "weekdays", "turns". */
  readonly by: string;
}

const ordinals: Readonly<Record<string, number>> = {
  first: 1, '1st': 1, second: 2, '2nd': 2, third: 3, '3rd': 3, fourth: 4, '4th': 4, fifth: 5, '5th': 5, sixth: 6, '6th': 6, seventh: 7, '7th': 7,
};
const weekdayNumber: Readonly<Record<string, number>> = {
  monday: 0, mon: 0, tuesday: 1, tue: 1, tues: 1, wednesday: 2, wed: 2, weds: 2, thursday: 3, thu: 3, thur: 3, thurs: 3, friday: 4, fri: 4, saturday: 5, sat: 5, sunday: 6, sun: 6,
};
const drives: ReadonlySet<string> = new Set(['drive', 'drives', 'driving', 'drivin', 'drove', 'driven', 'road', 'wheel', 'motoring', 'travel', 'travelling', 'leg', 'ride', 'transfer', 'engine', 'motor', 'cruise', 'cruising', 'steam', 'steaming', 'sail', 'haul', 'move', 'push', 'behind', 'on']);
const parked: ReadonlySet<string> = new Set(['camp', 'camped', 'camping', 'parked', 'park', 'stay', 'stays', 'staying', 'put', 'rest', 'resting', 'still', 'stationary', 'stop', 'stopped', 'put', 'idle', 'moored', 'anchored', 'standing', 'stand', 'stood', 'sit', 'sitting', 'still', 'base', 'layover', 'anchor', 'lie', 'lying', 'parking', 'none', 'nothing', 'nowhere', 'zero', 'home']);
const generators: ReadonlySet<string> = new Set(['charger:generator']);
const again: ReadonlySet<string> = new Set(['again', 'same', 'ditto', 'likewise', 'too', 'also', 'as']);
const mostDays = 21;

const isDays = (m: Mention): boolean => m.kind === 'amount' && m.dimension === 'time' && (m.unit === 'days' || m.unit === 'weeks');
const isHours = (m: Mention): boolean => m.kind === 'amount' && m.dimension === 'time' && (m.unit === 'h' || m.unit === 'min' || m.cls === '1h');

interface Draft {
  readonly days: PlanDay[];
  readonly used: Set<number>;
  target: number[];
  by: string;
}

/** Days told by a marker at `i`: their numbers from 1, and how many mentions it takes. */
function markerAt(mentions: readonly Mention[], i: number): { readonly days: readonly number[]; readonly to: number; readonly by: string } | undefined {
  const m = mentions[i]!;
  const isDayWord = m.kind === 'word' && (m.text === 'day' || m.text === 'days' || m.text === 'd');
  if (isDayWord || (m.kind === 'noun' && /^d$/.test(m.text))) {
    const days: number[] = [];
    let j = i + 1;
    let range = false;
    for (; j < mentions.length; j++) {
      const o = mentions[j]!;
      const value = o.kind === 'number' && Number.isInteger(o.told) && o.told >= 1 && o.told <= mostDays ? o.told : undefined;
      if (value !== undefined) {
        const last = days.at(-1);
        if (range && last !== undefined) for (let d = last + 1; d < value; d++) days.push(d);
        range = false;
        if (last !== undefined && value <= last) break;
        days.push(value);
        if (mentions[j + 1]?.kind === 'amount') {
          j++;
          break;
        }
      } else if (days.length > 0 && (o.text === '-' || o.text === 'to' || o.text === 'till' || o.text === 'through')) range = true;
      else if (days.length > 0 && (o.text === 'and' || o.text === '&' || o.text === ',' || o.text === '+' || o.text === '/' || o.text === 'n') && mentions[j + 1]?.kind === 'number' && mentions[j + 2]?.kind !== 'amount') continue;
      else if (days.length > 0 && (o.text === 'and' || o.text === ',' || o.text === '&') && isDay(mentions[j + 1]) && mentions[j + 2]?.kind === 'number') {
        j++;
      } else break;
    }
    return days.length > 0 ? { days, to: j, by: 'numbers' } : undefined;
  }
  if (m.kind === 'word' && Object.hasOwn(ordinals, m.text) && mentions.slice(i + 1, i + 6).some(o => o.text === 'day' || o.text === 'days' || o.text === 'one')) {
    const days = [ordinals[m.text]!];
    let j = i + 1;
    while (j < mentions.length && (mentions[j]!.text === 'and' || mentions[j]!.text === ',' || Object.hasOwn(ordinals, mentions[j]!.text) || mentions[j]!.text === 'the')) {
      if (Object.hasOwn(ordinals, mentions[j]!.text)) days.push(ordinals[mentions[j]!.text]!);
      j++;
    }
    if (mentions[j]?.text === 'day' || mentions[j]?.text === 'days' || mentions[j]?.text === 'one') j++;
    return { days, to: j, by: 'numbers' };
  }
  return undefined;
}

const isDay = (m: Mention | undefined): boolean => m?.text === 'day' || m?.text === 'days' || m?.text === 'd';

const weekdayOf = (m: Mention): number | undefined => {
  if (m.kind !== 'clock' && m.kind !== 'weekday') return undefined;
  const [first = ''] = m.text.split(' ');
  return Object.hasOwn(weekdayNumber, first) ? weekdayNumber[first] : undefined;
};

/** The plan a message tells, if it tells one: two days or more that differ in driving, sky or generator. */
export function planOf(mentions: readonly Mention[]): Plan | undefined {
  const draft: Draft = { days: [], used: new Set(), target: [], by: 'turns' };
  let firstWeekday: number | undefined;
  const has = (key: keyof PlanDay): boolean => draft.target.length > 0 && draft.target.some(d => draft.days[d]![key] !== undefined);
  const reach = (numbers: readonly number[]): void => {
    for (const n of numbers) while (draft.days.length < n && draft.days.length < mostDays) draft.days.push({});
    draft.target = numbers.map(n => n - 1).filter(n => n < draft.days.length);
  };
  const nextDays = (count: number): void => {
    const from = draft.days.length;
    reach(Array.from({ length: count }, (_, k) => from + k + 1));
  };
  const set = (key: keyof PlanDay, value: number | string, i: number): void => {
    if (draft.target.length === 0 || (has(key) && draft.by === 'turns')) nextDays(1);
    for (const d of draft.target) (draft.days[d] as Record<string, unknown>)[key] = value;
    draft.used.add(i);
  };
  const near = (i: number, test: (m: Mention) => boolean, most = 4): boolean => {
    for (let d = 1; d <= most; d++) {
      const b = mentions[i - d];
      if (b && (b.text === '.' || b.text === ';' || b.text === ',' || b.text === ':')) break;
      if (b && test(b)) return true;
    }
    for (let d = 1; d <= most; d++) {
      const a = mentions[i + d];
      if (a && (a.text === '.' || a.text === ';' || a.text === ',')) break;
      if (a && test(a)) return true;
    }
    return false;
  };
  let pending = 0;
  for (let i = 0; i < mentions.length; i++) {
    const m = mentions[i]!;
    const marker = markerAt(mentions, i);
    if (marker) {
      reach(marker.days);
      draft.by = 'numbers';
      pending = 0;
      i = marker.to - 1;
      continue;
    }
    const weekday = weekdayOf(m);
    if (weekday !== undefined) {
      firstWeekday ??= weekday;
      const n = ((weekday - firstWeekday + 7) % 7) + 1;
      const next = mentions[i + 1];
      const other = next && (next.text === 'and' || next.text === '&' || next.text === '+' || next.text === 'n') && mentions[i + 2] ? weekdayOf(mentions[i + 2]!) : undefined;
      const through = next && (next.text === '-' || next.text === 'to' || next.text === 'till') && mentions[i + 2] ? weekdayOf(mentions[i + 2]!) : undefined;
      const numbers = [n];
      if (other !== undefined) numbers.push(((other - firstWeekday + 7) % 7) + 1);
      if (through !== undefined) for (let d = n + 1; d <= ((through - firstWeekday + 7) % 7) + 1; d++) numbers.push(d);
      reach(numbers);
      draft.by = 'weekdays';
      draft.used.add(i);
      if (other !== undefined || through !== undefined) {
        draft.used.add(i + 2);
        i += 2;
      }
      continue;
    }
    if (isDays(m) && m.told >= 1 && m.value / 24 <= mostDays && draft.by !== 'weekdays') {
      // "Then two days parked", "three sunny days": as many more; said first it may be the whole span.
      const count = Math.round(m.value / 24);
      if (count >= 1 && near(i, o => o.kind === 'sky' || parked.has(o.text) || drives.has(o.text) || o.text === 'then' || o.kind === 'without', 5)) {
        pending = count;
        nextDays(count);
        draft.used.add(i);
      }
      continue;
    }
    if (m.kind === 'word' && (m.text === 'then' || m.text === 'next' || m.text === 'tomorrow' || m.text === 'after') && draft.by === 'turns') {
      draft.target = [];
      pending = 0;
      continue;
    }
    if (m.kind === 'clock' && (m.text === 'tomorrow' || m.text === 'tonight') && draft.by === 'turns') {
      draft.target = [];
      continue;
    }
    if (m.kind === 'word' && (m.text === 'last' || m.text === 'final') && mentions.slice(i + 1, i + 3).some(isDay) && draft.days.length > 0) {
      if (draft.by === 'turns') draft.target = [];
      else nextDays(1);
      continue;
    }
    if (m.kind === 'sky') {
      set('sky', m.key, i);
      continue;
    }
    if (isHours(m)) {
      const isGenerator = near(i, o => generators.has(o.cls), 4);
      const isDrive = near(i, o => drives.has(o.text), 4);
      if (isGenerator && !isDrive) set('generatorH', m.value, i);
      else if (isDrive || (draft.target.length > 0 && draft.by !== 'turns' && !near(i, o => o.kind === 'thing', 3) && m.rate === undefined)) set('drivingH', m.value, i);
      continue;
    }
    if (m.kind === 'without' && m.key === 'driving' && draft.target.length + draft.days.length > 0) {
      if (!has('drivingH') || draft.by === 'turns') set('drivingH', 0, i);
      continue;
    }
    if (m.kind === 'word' && parked.has(m.text) && (draft.days.length > 0 || mentions.slice(i, i + 8).some(o => drives.has(o.text)))) {
      if (draft.target.length > 0 && has('drivingH') && draft.by !== 'turns') continue;
      if (draft.target.length > 0 && draft.target.some(d => draft.days[d]!.drivingH === 0)) continue;
      if (pending > 0 || draft.by !== 'turns') {
        if (draft.target.length > 0 && !has('drivingH')) for (const d of draft.target) draft.days[d]!.drivingH = 0;
      } else set('drivingH', 0, i);
    } else if (m.kind === 'word' && again.has(m.text) && draft.by !== 'turns' && draft.target.length > 0) {
      const [first] = draft.target as [number];
      const before = draft.days[first - 1];
      if (before && m.text !== 'too' && m.text !== 'also' && m.text !== 'as') for (const d of draft.target) draft.days[d] = { ...before, ...draft.days[d] };
    }
  }
  const told = draft.days.filter(d => Object.keys(d).length > 0).length;
  if (draft.days.length < 2 || told < 1) return undefined;
  const differ = new Set(draft.days.map(d => JSON.stringify(d))).size > 1;
  if (!differ && draft.by === 'turns') return undefined;
  return { days: draft.days, used: [...draft.used].sort((a, b) => a - b), by: draft.by };
}

/** The plan with days without driving left open, where nobody said that they have none. */
export const withoutZeros = (days: readonly PlanDay[]): PlanDay[] =>
  days.map(({ drivingH, ...rest }) => (drivingH ? { drivingH, ...rest } : rest));
/** The plan with no driving on the days that say nothing of it. */
export const withZeros = (days: readonly PlanDay[]): PlanDay[] => (days.some(d => d.drivingH) ? days.map(d => ({ drivingH: 0, ...d })) : [...days]);
