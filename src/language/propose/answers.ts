import type { Mention } from '../recognise/mention.ts';
import { alternatorKinds } from '../words/en/alternator-kinds.ts';
import {
  alternatorFixed,
  alternatorSmart,
  takenCharging,
  takenLoad,
  takenRest,
  tripOne,
  tripRound,
} from './slots.ts';

const taken: readonly number[] = [takenRest, takenLoad, takenCharging];
const trip: readonly number[] = [tripOne, tripRound];
const regulated: Readonly<Record<'smart' | 'fixed', readonly number[]>> = {
  smart: [alternatorSmart],
  fixed: [alternatorFixed],
};
/** Words that may tell, in answer to a question, how the volts were taken, what the length was or how an alternator regulates. */
const answers: Readonly<Record<string, readonly number[]>> = Object.fromEntries([
  ...'rest rested resting rests settled sitting sat idle off nothing nowt disconnected standing stood still on going runs running load loads loaded unloaded pulling drawing working charging charged plugged connected driving drove'
    .split(' ')
    .map(word => [word, taken]),
  ...'way back return returning returned round trip loop both single total wires wire distance length run'
    .split(' ')
    .map(word => [word, trip]),
  ...Object.entries(alternatorKinds).map(([word, kind]) => [word, regulated[kind]]),
]);
/** What a plain word may tell in answer to a question: how volts were taken, which way a length goes, what an alternator is. */
export type Awaited = 'taken' | 'trip' | 'alternator';

/** What a mention tells only in answer to a question; undefined: it tells something by itself. */
export const awaitedBy = (m: Mention): Awaited | undefined =>
  m.kind !== 'word' ? undefined : awaited(answersOf(m.text));

const awaited = (slots: readonly number[]): Awaited =>
  slots === taken ? 'taken' : slots === trip ? 'trip' : 'alternator';

const nothing: readonly number[] = [];

/** The slots that a plain word may fill. */
export const answersOf = (word: string): readonly number[] =>
  Object.hasOwn(answers, word) ? (answers[word] ?? nothing) : nothing;
