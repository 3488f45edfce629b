import { expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { calledOn } from '#conversation/turns/called.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { nothingSaid } from '../intents/setting.ts';

const message = (text: string, isCalled = false) =>
  ({
    chat: 'camp',
    from: 'ben',
    text,
    at: new Date('2026-01-15T09:00:00Z'),
    kind: 'group',
    isCalled,
  }) as const;

/** A line as if read: talk for the most part, and what else it may be. */
const heard = (text: string, ...others: [intent: string, probability: number][]) =>
  ({
    ...nothingSaid,
    recognised: recognise(text),
    intent: 'none',
    cues: new Set(text.includes('?') ? ['question-mark'] : []),
    options: [['none', 0.6] as const, ...others].map(([intent, probability]) => ({
      intent,
      stated: {},
      probability,
    })),
  }) as never;

test.for<[text: string, isCalled: boolean, intent: string, ...others: [string, number][]]>([
  ['bot what battery does she need', false, 'battery-size', ['battery-size', 0.3]],
  ['billywatt what battery does she need', false, 'battery-size', ['battery-size', 0.3]],
  ['what battery does she need', true, 'battery-size', ['battery-size', 0.3]],
  ['what battery does she need', false, 'none', ['battery-size', 0.3]],
  ['are you awake?', true, 'unclear', ['rig', 0.01]],
  ['good on you bot', false, 'none', ['rig', 0.3]],
])('%s, called by name %s: %s', ([text, isCalled, intent, ...others]) => {
  expect(calledOn(heard(text, ...others), message(text, isCalled))).toMatchObject({ intent });
});

test('who is called by name and asked something says something', () => {
  const text = 'is that one any good?';
  const said = (isCalled: boolean) => converse(emptyMemory(), message(text, isCalled)).answer.text;
  expect(said(true)).not.toBe('');
});
