import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { intents } from '#intents';
import { readPhrases } from '../intents/phrases.ts';

/** A button pressed: what stood before it, and what came of it. */
export interface Pressed {
  readonly turns: readonly string[];
  readonly shown: Answer;
  readonly button: string;
  readonly answer: Answer;
}

/** Numbers from 0 to 1 that are the same at every run. Mulberry32. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const start = Date.parse('2026-01-15T09:00:00Z');

/** Plays talks of one to three questions of any kind, and presses every button under the last answer. */
export function* press(talks: number, seed: number): Generator<Pressed> {
  const random = seeded(seed);
  const among = <T>(all: readonly T[]): T => present(all[Math.floor(random() * all.length)]);
  const rows = intents.map(({ name }) => readPhrases(name).filter(row => !row.not));
  const seen = new Map<string, { memory: Memory; answer: Answer }>();
  for (let talk = 0; talk < talks; talk++) {
    const kind = random() < 0.5 ? 'private' : 'group';
    const asked = Array.from({ length: 1 + Math.floor(random() * 3) }, () => among(among(rows)));
    const turns = asked.flatMap(({ before = [], say }) => [...before, say]);
    let at = start;
    const say = (memory: Memory, text: string) => {
      at += 60_000;
      return converse(memory, { chat: 'c', from: 'kim', text, at: new Date(at), kind });
    };
    let now: { memory: Memory; answer?: Answer } = { memory: emptyMemory() };
    turns.forEach((turn, i) => {
      const key = `${kind}|${turns.slice(0, i + 1).join('|')}`;
      const known = seen.get(key);
      if (known) at += 60_000;
      const done = known ?? say(now.memory, turn);
      if (i === 0) seen.set(key, done);
      now = done;
    });
    const shown = present(now.answer);
    for (const button of shown.next) {
      const before = at;
      yield { turns, shown, button, answer: say(now.memory, button).answer };
      at = before;
    }
  }
}

const plain = (text: string): string => text.replace(/\s+/g, ' ').trim();

/** What is wrong with what a button brought; undefined where it helps. */
export function useless({ shown, button, answer }: Pressed): string | undefined {
  if (answer.intent === 'unclear' && shown.intent !== 'unclear') return 'it ends in no power question';
  if (answer.intent === 'none' && shown.intent !== 'none') return 'it is taken for talk';
  // One of several questions chosen: what it needs is asked next.
  const isChosen = shown.intent === 'unclear';
  if (!isChosen && /To work that out I need/.test(answer.text)) return 'it asks what it needs';
  if (plain(answer.text) === plain(shown.text)) return 'it repeats the answer';
  // The same question again, turned: what to be careful of stays, unless the turn takes its cause away. What could not
  // be answered yet is not turned by an example of how to ask it.
  const isTurn =
    answer.intent === shown.intent &&
    Object.keys(shown.figures).length > 0 &&
    shown.intent !== 'term' &&
    !/^(?:what if (?:agm|lithium|in parallel)|quiz|next)/.test(button);
  const lost = isTurn ? shown.cautions.filter(caution => !answer.cautions.includes(caution)) : [];
  return lost.length > 0 ? `it takes a caution away: ${lost.join(' ')}` : undefined;
}
