import type { Quantity, State } from '../state.ts';
import { textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { ampere, watt } from './unit-words.ts';

const days = list('day days d night nite evening morning arvo afternoon 24h nights nightly');
const hours = list('hour hr h hrs hours');
const joints = list('/ per a an each every pro por par any');

const kindsOfDay = list(
  'normal usual typical average market camp working work shoot school sunny good hot summer winter',
);

export interface Per {
  readonly per: 'day' | 'hour' | 'week' | 'other day';
  readonly end: number;
}

/** "a day", "per hour", "/24h", "daily", "every evening" at `at`, or undefined. */
export function perAt(state: State, at: number): Per | undefined {
  const text = textAt(state, at);
  if (text === 'daily' || text === 'nightly') return { per: 'day', end: at + 1 };
  if (text === 'hourly') return { per: 'hour', end: at + 1 };
  if (text === 'the' && wordAt(state, at + 1) === 'day' && wordAt(state, at + 2) === '')
    return { per: 'day', end: at + 2 };
  if (text === 'in' && wordAt(state, at + 1) === 'a' && days.has(wordAt(state, at + 2)))
    return { per: 'day', end: at + 3 };
  if (!joints.has(text)) return undefined;
  let next = at + 1;
  if (wordAt(state, next) === 'single') next++;
  if (text === 'every' && /^(other|second)$/.test(wordAt(state, next)) && days.has(wordAt(state, next + 1)))
    return { per: 'other day', end: next + 2 };
  if (kindsOfDay.has(wordAt(state, next)) && days.has(wordAt(state, next + 1))) next++;
  const word = wordAt(state, next);
  if (days.has(word)) return { per: 'day', end: next + 1 };
  if (hours.has(word)) return { per: 'hour', end: next + 1 };
  if (word === 'week' || word === 'wk') return { per: 'week', end: next + 1 };
  const number = state.tokens[next];
  if (
    (text === 'per' || text === '/' || text === 'every') &&
    number?.kind === 'number' &&
    number.value === 24 &&
    hours.has(wordAt(state, next + 1))
  )
    return { per: 'day', end: next + 2 };
  return undefined;
}

/**
 * Puts a rate onto a quantity. An hour's Ah are amps and an hour's Wh are watts, both on average; people also say
 * "amps per hour" and mean amps.
 */
export function rate(state: State, made: Quantity, at: number): number {
  const per = perAt(state, at);
  if (!per) return at;
  const { dimension } = made.unit;
  if (per.per === 'week' || per.per === 'other day') {
    if (dimension !== 'charge' && dimension !== 'energy' && dimension !== 'time') return at;
    made.value /= per.per === 'week' ? 7 : 2;
    made.per = 'day';
  } else if (per.per === 'hour') {
    if (dimension === 'charge') made.unit = ampere;
    else if (dimension === 'energy') made.unit = watt;
    else if (dimension !== 'current' && dimension !== 'power') return at;
    made.per = 'hour';
  } else {
    if (dimension === 'voltage' || dimension === 'area' || dimension === 'length') return at;
    made.per = 'day';
  }
  return per.end;
}
