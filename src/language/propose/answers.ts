import type { Mention } from '../recognise/mention.ts';
import { takenCharging, takenLoad, takenRest, tripOne, tripRound } from './slots.ts';

const taken: readonly number[] = [takenRest, takenLoad, takenCharging];
const trip: readonly number[] = [tripOne, tripRound];
/** Words that may tell, in answer to a question, how the volts were taken or what the length was. */
const answers: Readonly<Record<string, readonly number[]>> = Object.fromEntries([
  ...'rest rested resting rests settled sitting sat idle off nothing nowt disconnected standing stood still on going running load loads loaded unloaded pulling drawing working charging charged plugged connected driving drove'
    .split(' ')
    .map(word => [word, taken]),
  ...'way back return returning returned round trip loop both single total wires wire distance length run'
    .split(' ')
    .map(word => [word, trip]),
]);
/** What a plain word may tell in answer to a question: how volts were taken, or which way a length goes. */
export type Awaited = 'taken' | 'trip';

/** What a mention tells only in answer to a question; undefined: it tells something by itself. */
export const awaitedBy = (m: Mention): Awaited | undefined =>
  m.kind !== 'word' ? undefined : answers[m.text] === taken ? 'taken' : 'trip';

const nothing: readonly number[] = [];

/** The slots that a plain word may fill. */
export const answersOf = (word: string): readonly number[] =>
  Object.hasOwn(answers, word) ? (answers[word] ?? nothing) : nothing;
