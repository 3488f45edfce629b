import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Heard, hear } from '#conversation/hear.ts';
import { emptyMemory, type Frame } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { turnOfTalk } from '#conversation/turns/retake.ts';

const at = new Date('2026-06-01T10:00:00Z');
const says = (text: string, more: Partial<Message> = {}): Message =>
  ({ chat: 'c', from: 'Ann', text, at, kind: 'group', ...more }) as Message;
const asked = (from: string, intent: Frame['intent']): Frame => ({
  intent,
  facts: { loads: [{ name: 'fan', powerW: 60 }] },
  claims: [],
  from,
  at: at.getTime(),
});

/** A line of which it isn't sure which question it is of. */
function unsure(text: string, readings: readonly (readonly [intent: string, probability: number])[]): Heard {
  const heard = hear(emptyMemory(), says(text));
  const option = { ...present(heard.options[0]), stated: { loads: [{ powerW: 90 }] } };
  return {
    ...heard,
    intent: present(readings[0])[0],
    certainty: 0.4,
    options: readings.map(([intent, probability]) => ({ ...option, intent, probability })),
  } as Heard;
}

describe('an unsure turn is of', () => {
  const annAndBob = { ...emptyMemory(), frames: [asked('ann', 'run-time'), asked('bob', 'solar-size')] };
  const either = unsure('and with 90 W?', [
    ['solar-size', 0.5],
    ['run-time', 0.4],
  ]);

  test('the speaker’s own last question', () => {
    expect(turnOfTalk(annAndBob, says('and with 90 W?'), either)?.intent).toBe('run-time');
  });

  test('the chat’s, where the speaker asked nothing yet', () => {
    const taken = turnOfTalk(annAndBob, says('and with 90 W?', { from: 'Cy' }), either);
    expect(taken?.intent).toBe('solar-size');
    expect(taken?.facts.loads).toMatchObject([{ powerW: 90 }]);
  });

  test('the one replied to, before both', () => {
    const onto = asked('dot', 'solar-size');
    expect(turnOfTalk(annAndBob, says('and with 90 W?', { onto }), either)?.intent).toBe('solar-size');
  });

  test.for<[why: string, text: string, readings: (readonly [string, number])[]]>([
    ['it asks a question of its own', 'and how long does 90 W last?', [['run-time', 0.5]]],
    ['it turns nothing', 'the 90 W one is nice', [['run-time', 0.5]]],
    [
      'it is hardly of that question',
      'and with 90 W?',
      [
        ['cable-size', 0.9],
        ['run-time', 0.1],
      ],
    ],
  ])('none where %s', ([, text, readings]) => {
    expect(turnOfTalk(annAndBob, says(text), unsure(text, readings))).toBeUndefined();
  });

  test('none where what it tells is unsure itself', () => {
    const text = 'and with 90 W?';
    const heard = unsure(text, [['run-time', 0.5]]);
    const other = { ...present(heard.options[0]), stated: { solar: [{ powerW: 90 }] }, probability: 0.45 };
    const torn = { ...heard, options: [...heard.options, other] } as Heard;
    expect(turnOfTalk(annAndBob, says(text), torn)).toBeUndefined();
  });

  test('none where nobody asked anything', () => {
    expect(turnOfTalk(emptyMemory(), says('and with 90 W?'), either)).toBeUndefined();
  });
});
