import { quantityAt, type State, type Thing, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { hasDraw, hasTime, isLoad } from './time-owners.ts';

const always = list('nonstop constantly continuously 24/7 permanently');

/** "all day", "24/7", "nonstop", "round the clock": 24 hours; the last ones leave no room for a duty cycle. */
export function roundTheClock(state: State): void {
  const { tokens } = state;
  for (let i = 0; i < tokens.length; i++) {
    const word = wordAt(state, i);
    const day =
      word === 'all' &&
      (wordAt(state, i + 1) === 'day' || (wordAt(state, i + 1) === 'the' && wordAt(state, i + 2) === 'time'));
    const clock = word === 'round' && wordAt(state, i + 1) === 'the' && wordAt(state, i + 2) === 'clock';
    const dayAndNight =
      (word === 'day' && wordAt(state, i + 1) === 'and' && wordAt(state, i + 2) === 'night') ||
      (tokens[i]!.text === '24' && textAt(state, i + 1) === '/' && textAt(state, i + 2) === '7');
    const non = always.has(word) || (word === 'non' && wordAt(state, i + 1) === 'stop');
    if (!(day || clock || dayAndNight || non) || isWeather(state, i)) continue;
    const target = owner(state, i);
    const targets = target ? [target] : [];
    if (non)
      for (const one of state.things)
        if (
          isLoad(one) &&
          hasDraw(one) &&
          !hasTime(one) &&
          !targets.includes(one) &&
          state.sentences[one.at] === state.sentences[i] &&
          one.at < i
        )
          targets.push(one);
    if (tokens[i]!.text === '24') for (const k of [i, i + 2]) tokens[k]!.isKnown = true;
    for (const one of targets) {
      if (!hasTime(one)) one.hours = 24;
      if (non || clock || dayAndNight || (day && wordAt(state, i + 1) === 'the')) one.isAverage = true;
    }
  }
}

/** "overcast all day", "parked the whole time" are no loads. */
const isWeather = (state: State, at: number): boolean =>
  /^(overcast|cloudy|sunny|raining|rain|clouded|parked|trees|shade|shaded|100w)$/.test(
    wordAt(state, at - 1),
  ) || quantityAt(state, at - 1)?.taken === 'solar';

const owner = (state: State, at: number): Thing | undefined =>
  state.things.findLast(
    one =>
      isLoad(one) &&
      one.at < at &&
      hasDraw(one) &&
      state.sentences[one.at] === state.sentences[at] &&
      !hasTime(one),
  ) ??
  (state.things.filter(isLoad).length === 1
    ? state.things.find(one => isLoad(one) && hasDraw(one))
    : undefined);
