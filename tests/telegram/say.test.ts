import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buttonData, keyboard, readButton } from '#telegram/ui/buttons.ts';
import { say, withWorking } from '#telegram/ui/say.ts';
import { checkButtons, checkEntities, checkText } from './fake/rules.ts';

test('the first line is bold, the rest plain', () => {
  expect(say('About 42 hours.\nOn 50 Ah.')).toEqual({
    text: 'About 42 hours.\nOn 50 Ah.',
    entities: [{ type: 'bold', offset: 0, length: 15 }],
  });
});

test('offsets count UTF-16 units', () => {
  const { text, entities } = say('🔋 full\nrest', { asked: 'and 🌥?', working: 'I = P ÷ V\n= 5 A' });
  const pieces = entities.map(({ type, offset, length }) => [type, text.slice(offset, offset + length)]);
  expect(pieces).toEqual([
    ['bold', '🔋 full'],
    ['italic', 'and 🌥?'],
    ['expandable_blockquote', 'I = P ÷ V\n= 5 A'],
  ]);
});

/** Whatever people type: emoji, marks of writing direction, half pairs, markup, long lines. */
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 300 }),
  fc.string({ unit: 'binary', maxLength: 6000, minLength: 3000 }),
  fc
    .array(fc.constantFrom('*', '_', '[', '`', '\n', '\u202e', '🔋', '\ud83d', ' ', 'a'), { maxLength: 5000 })
    .map(list => list.join('')),
);

describe('whatever is said stays within Telegram’s limits', () => {
  test('texts and entities', () => {
    fc.assert(
      fc.property(
        anyText,
        fc.option(anyText, { nil: undefined }),
        fc.option(anyText, { nil: undefined }),
        (text, asked, working) => {
          const said = say(text, { asked, working });
          checkText(said.text);
          checkEntities(said.text, said.entities);
          const more = withWorking(said.text, said.entities, working ?? '');
          checkText(more.text);
          checkEntities(more.text, more.entities);
        },
      ),
      { numRuns: 150 },
    );
  });

  test('buttons, for any person and any next questions', () => {
    fc.assert(
      fc.property(
        anyText,
        fc.maxSafeNat(),
        fc.array(anyText, { maxLength: 5 }),
        fc.boolean(),
        (text, asker, next, hasWorking) => {
          checkButtons(keyboard(text, asker, next, { hasWorking, hasPicture: !hasWorking }));
        },
      ),
      { numRuns: 100 },
    );
  });

  test('a button reads back as it was written', () => {
    const button = { action: 'next', index: 2, asker: Number.MAX_SAFE_INTEGER, answer: 'Ab-_2345' } as const;
    expect(readButton(buttonData(button))).toEqual(button);
    expect(Buffer.byteLength(buttonData(button))).toBeLessThanOrEqual(64);
  });

  test.each(['', '0|n|0|x|Ab-_2345', '1|n|0|x', '2|n|0|x|Ab-_2345', 'settings'])(
    'a button of another version: %s',
    data => {
      expect(readButton(data)).toBeUndefined();
    },
  );
});
