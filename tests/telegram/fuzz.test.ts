import fc from 'fast-check';
import type { Message } from 'grammy/types';
import { describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { intents } from '#intents';
import { readPhrases } from '../intents/phrases.ts';
import { type Stage, stage } from './fake/bot.ts';
import { alone, group, message, press, sam } from './fake/people.ts';

/** Pictures are drawn elsewhere; here only their captions matter: a PNG's head of 1200 × 675 will do. */
vi.mock('#answer/chart/png.ts', () => ({
  png: async () => Buffer.from('89504e470d0a1a0a0000000d49484452000004b0000002a3', 'hex'),
}));

const hard = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 200 }),
  fc.string({ unit: 'binary', minLength: 3500, maxLength: 4080 }),
  fc.constantFrom(
    '_*[`~>#+-=|{}.!\\',
    '\u202eright to left\u202c',
    '🔋'.repeat(2000),
    '<b>x</b> &amp;',
    '\0\u0007',
    '@@@',
    '/',
  ),
);

/** Real questions, so that all kinds of answers with all their buttons come about. */
const phrases = intents.flatMap(intent => readPhrases(intent.name).map(row => row.say));
const word = fc.oneof(hard, fc.constantFrom(...phrases), fc.constantFrom(...phrases));
/** A question between words that mean nothing, or with some of them inside. */
const words = fc.oneof(
  word,
  fc.tuple(fc.constantFrom(...phrases), hard).map(([a, b]) => `${a} ${b}`.slice(0, 4000)),
  fc.tuple(fc.constantFrom(...phrases), fc.constantFrom(...phrases)).map(([a, b]) => `${a}\n${b}`),
);
const names = fc.oneof(
  fc.string({ unit: 'binary', minLength: 1, maxLength: 64 }),
  fc.constantFrom('Sam', '\u202eSam', '🏕️'.repeat(20), '__proto__', '{rest}', '$&'),
);

/** Refusals that are part of the trade: the bot gets around them, and no words are lost. */
const usual = /message is not modified|no text in the message to edit|query is too old/;
const broken = (s: Stage): string[] => s.world.refused.filter(text => !usual.test(text));

/** How many messages came; thanks get a reaction instead. */
const sends = (s: Stage): number =>
  ['sendMessage', 'sendPhoto', 'setMessageReaction'].reduce(
    (sum, name) => sum + s.world.sent(name).length,
    0,
  );

/** Presses every button that stands under the newest message, as long as there are new ones. */
async function pressAll(s: Stage, from: Message['from']): Promise<void> {
  for (let n = 0; n < 4; n++) {
    const newest = s.answers().findLast(m => m.reply_markup?.inline_keyboard !== undefined);
    const pressable = newest?.reply_markup?.inline_keyboard.flat().filter(b => 'callback_data' in b);
    const label = pressable?.at(-1 - n)?.text;
    if (newest === undefined || label === undefined) return;
    await s.give({ callback_query: press(newest, label, from) });
  }
}

describe('whatever people type, whatever they are called', () => {
  test('one answer, within Telegram’s rules, and its buttons work', async () => {
    await fc.assert(
      fc.asyncProperty(hard, hard, async (given, name) => {
        const s = stage();
        const from = { ...sam, first_name: name.slice(0, 64) };
        await s.give({ message: message(`/power x${given}`, { from, entities: [] }) as never });
        expect(s.answers()).toHaveLength(1);
        const [first] = s.answers();
        await s.give({ callback_query: press(present(first), 'Show working') });
        await s.give({ callback_query: press(present(s.answers()[0]), 'make it 5 days') });
        expect(s.answers()).toHaveLength(1);
        expect(broken(s)).toEqual([]);
        expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('what the bot really says, in groups and in private, with all that its buttons bring', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(words, { minLength: 1, maxLength: 3 }),
        names,
        names,
        fc.boolean(),
        async (texts, first, last, isPrivate) => {
          const s = stage({ converse });
          const from = { ...sam, first_name: first, last_name: last };
          for (const text of texts) {
            const before = sends(s);
            const given = isPrivate ? text : `/power ${text.trimStart()}`;
            await s.give({
              message: message(given, { from, entities: [], chat: isPrivate ? alone : group }) as never,
            });
            const isOther = isPrivate && /^\/[A-Za-z0-9_]+@/.test(text);
            // Talk among people is left alone.
            const sent = sends(s) - before;
            expect(isPrivate || isOther ? [isOther ? 0 : 1] : [0, 1]).toContain(sent);
          }
          await pressAll(s, from);
          expect(broken(s)).toEqual([]);
          expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
        },
      ),
      { numRuns: 80, endOnFailure: true },
    );
  });

  test('asked inline and as a guest too', async () => {
    await fc.assert(
      fc.asyncProperty(words, names, async (text, first_name) => {
        const s = stage({ converse });
        const from = { ...sam, first_name };
        await s.give({ inline_query: { id: 'q', from, query: text.slice(0, 256), offset: '' } });
        await s.give({ guest_message: message(text, { from, guest_query_id: 'g', entities: [] }) as never });
        expect(broken(s)).toEqual([]);
        expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
