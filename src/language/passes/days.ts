import { isStop, quantityAt, type State, type Thing, textAt, wordAt } from '../state.ts';
import { dayTimes } from '../words/en/calendar.ts';
import { list } from '../words/list.ts';
import { weekdayAt } from './calendar.ts';

interface Moment {
  /** Monday 0, or −1 where only a time was said. */
  readonly day: number;
  readonly hour: number;
  readonly hasHour: boolean;
  readonly at: number;
  end: number;
}

/** Days by name: "friday 6pm … sunday noon", "till tuesday lunch", "thu we drive 4h, fri sat no driving". */
export function days(state: State): void {
  const moments = momentsOf(state);
  if (moments.length === 0) return;
  const named = moments.filter(moment => moment.day >= 0);
  if (named.length >= 2 && plan(state, named)) return;
  if (named.length === 2) {
    span(state, named[0]!, named[1]!);
    return;
  }
  if (named.length === 1) {
    until(state, named[0]!);
    return;
  }
  clocks(state, moments);
}

function momentsOf(state: State): Moment[] {
  const found: Moment[] = [];
  for (let i = 0; i < state.tokens.length; i++) {
    const day = weekdayAt(state, i);
    let next = day >= 0 ? i + 1 : i;
    if (
      day >= 0 &&
      (wordAt(state, next) === 'at' || wordAt(state, next) === 'around' || wordAt(state, next) === 'by')
    )
      next++;
    const clock = clockAt(state, next);
    if (day >= 0 || (clock && isClockTalk(state, i, clock.isPlain))) {
      if (day >= 0) state.tokens[i]!.isKnown = true;
      if (clock) for (let k = next; k < clock.end; k++) state.tokens[k]!.isKnown = true;
      found.push({ day, hour: clock?.hour ?? 12, hasHour: !!clock, at: i, end: clock ? clock.end : next });
      i = (clock ? clock.end : next) - 1;
    }
  }
  return found;
}

interface Clock {
  readonly hour: number;
  readonly end: number;
  /** A bare number: a time only between "from" and "till". */
  readonly isPlain: boolean;
}

function clockAt(state: State, at: number): Clock | undefined {
  const token = state.tokens[at];
  if (!token) return undefined;
  if (token.kind === 'word') {
    const hour = dayTimes[token.text];
    return hour !== undefined ? { hour, end: at + 1, isPlain: false } : undefined;
  }
  if (token.kind !== 'number' || token.value > 24) return undefined;
  const half = wordAt(state, at + 1);
  if (half === 'pm' || half === 'am' || half === 'p' || half === 'a') {
    if (half.length === 1 && wordAt(state, at + 2) !== 'm') return undefined;
    const isAfternoon = half[0] === 'p';
    const hour = (token.value % 12) + (isAfternoon ? 12 : 0);
    return {
      hour: minutes(token.text, token.isClock, hour),
      end: at + (half.length === 1 ? 3 : 2),
      isPlain: false,
    };
  }
  if (half === 'oclock') return { hour: token.value, end: at + 2, isPlain: false };
  return { hour: token.value, end: at + 1, isPlain: !token.isClock };
}

/** "6.30pm" is half past six. */
const minutes = (text: string, isClock: boolean, hour: number): number => {
  const point = text.indexOf('.');
  if (isClock || point < 0 || text.length - point !== 3) return hour;
  return Math.floor(hour) + Number(text.slice(point + 1)) / 60;
};

const isClockTalk = (state: State, at: number, isPlain: boolean): boolean => {
  if (state.tokens[at]!.kind === 'word' && !/^(noon|midnight|midday)$/.test(wordAt(state, at))) return false;
  const before = wordAt(state, at - 1);
  const isBetween = /^(from|till|til|until|to)$/.test(before);
  if (!isPlain)
    return (
      isBetween ||
      textAt(state, at - 1) === '-' ||
      /^(til|till|until|to|-)$/.test(textAt(state, at + 2)) ||
      /^(til|till|until|to|-)$/.test(textAt(state, at + 1))
    );
  return (
    (before === 'about' && wordAt(state, at - 2) === 'from') ||
    before === 'from' ||
    /^(till|til|until)$/.test(before) ||
    (before === 'to' && wordAt(state, at - 3) === 'from')
  );
};

/** Two named days with times: how long, and the hour it starts. */
function span(state: State, from: Moment, to: Moment): void {
  let days = (to.day - from.day + 7) % 7;
  if (days === 0 && to.hour <= from.hour) days = 7;
  const { facts } = state;
  const hours = from.hasHour || to.hasHour ? days * 24 + to.hour - from.hour : days * 24;
  if (hours <= 0 || (facts.durationH !== undefined && !state.isWeakDuration)) return;
  facts.durationH = Math.round(hours * 100) / 100;
  state.isWeakDuration = false;
  if (from.hasHour) facts.startHour = from.hour;
  facts.startWeekday = (from.day + 1) % 7;
  state.cues.add('trip');
}

/** "till tuesday lunch": from the time of the message. */
function until(state: State, to: Moment): void {
  const before = wordAt(state, to.at - 1) === 'the' ? wordAt(state, to.at - 2) : wordAt(state, to.at - 1);
  if (!/^(till|til|until|to|by|through|thru)$/.test(before)) return;
  const { at } = state.context;
  const now = at.getUTCHours() + at.getUTCMinutes() / 60;
  const today = (at.getUTCDay() + 6) % 7;
  const days = (to.day - today + 7) % 7;
  let hours = days * 24 + to.hour - now;
  if (hours <= 0) hours += 168;
  if (state.facts.durationH !== undefined && !state.isWeakDuration) return;
  state.facts.durationH = Math.round(hours * 100) / 100;
  state.isWeakDuration = false;
}

/** "from about 6 till 11 each night": hours of the load before it. */
function clocks(state: State, moments: readonly Moment[]): void {
  const [from, to] = moments;
  if (!from || !to || to.at - from.end > 2) return;
  let hours = to.hour - from.hour;
  if (hours <= 0) hours += from.hour <= 12 && to.hour <= 12 ? 12 : 24;
  const isOpen = (one: Thing): boolean => one.kind === 'load' && !one.isDropped && one.hours < 0;
  const loads = state.things.filter(isOpen);
  const load = loads.findLast(one => one.at < from.at) ?? (loads.length === 1 ? loads[0] : undefined);
  if (load && hours <= 24) load.hours = Math.round(hours * 100) / 100;
}

const notDriving = list(`
  no none not camp camped parked stay staying rest nothing zero still camping sit sitting nil off day
`);

/** "thu we drive 4h, fri sat sun no driving, mon 3h": hours driven, day by day from the first. */
function plan(state: State, named: readonly Moment[]): boolean {
  if (!state.cues.has('drive')) return false;
  const hours: number[] = [];
  let isPlan = false;
  const waiting: number[] = [];
  for (const [i, moment] of named.entries()) {
    const end = named[i + 1]?.at ?? endOf(state, moment.end);
    let [driven, isNone] = [-1, false];
    for (let k = moment.end; k < end; k++) {
      const quantity = quantityAt(state, k);
      if (quantity?.unit.dimension === 'time' && quantity.value <= 16 && !quantity.taken) {
        driven = quantity.value;
        quantity.taken = 'drive';
      }
      if (notDriving.has(wordAt(state, k))) isNone = true;
    }
    const skipped = i > 0 ? (moment.day - named[i - 1]!.day + 7) % 7 : 1;
    if (i > 0 && skipped === 0) return false;
    for (let k = 1; k < skipped; k++) hours.push(isRangeBetween(state, named[i - 1]!, moment) ? -1 : 0);
    hours.push(driven >= 0 ? driven : isNone ? 0 : -1);
    if (driven >= 0 || isNone) isPlan = true;
    waiting.push(hours.length - 1);
  }
  if (!isPlan) return false;
  // "fri sat sun no driving": the days without a word of their own share that of the day after.
  for (let i = hours.length - 1, next = 0; i >= 0; i--) {
    if (hours[i]! < 0) hours[i] = next;
    next = hours[i]!;
  }
  state.facts.drivingPlanH = hours.slice(0, 60);
  state.facts.startWeekday = (named[0]!.day + 1) % 7;
  state.cues.add('day-plan');
  // "til monday same time so 3 days": the number said goes before the names counted.
  const told = state.quantities.find(q => !q.taken && q.unit.symbol === 'days' && !q.isWeak && q.per === '');
  if (told && Math.abs(told.value / 24 - hours.length) <= 1) {
    told.taken = 'duration';
    state.facts.durationH = told.value;
    state.facts.drivingPlanH = hours.slice(0, Math.max(1, Math.round(told.value / 24)));
  }
  if (state.facts.durationH === undefined) state.facts.durationH = hours.length * 24;
  return true;
}

const isRangeBetween = (state: State, from: Moment, to: Moment): boolean =>
  /^(to|-|till|til|until)$/.test(textAt(state, from.end)) && to.at === from.end + 1;

const endOf = (state: State, from: number): number => {
  for (let i = from; i < state.tokens.length; i++)
    if (isStop(textAt(state, i)) || textAt(state, i) === ':' || textAt(state, i) === ',') return i;
  return state.tokens.length;
};
