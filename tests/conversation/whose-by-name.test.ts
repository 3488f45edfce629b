import { describe, expect, test } from 'vitest';
import { ownersIn } from '#language/recognise/owners.ts';
import { talk } from './talk.ts';

describe('whose gear a message speaks of', () => {
  test.for<[text: string, owner: string | undefined]>([
    ['and mine', 'me'],
    ['show sams rig', 'sam'],
    ['what about joes', 'jo'],
    ['the one from sam', 'sam'],
    ['what is written for the rig of sam', 'sam'],
    ['whats sam got', 'sam'],
    ['and how would jo get on with hers', 'jo'],
    ['its judes van not mine', 'jude'],
    ['mine or sams who lasts longer', 'sam'],
    ['thanks sam', undefined],
    ['sam is late again', undefined],
  ])('%s', ([text, owner]) => {
    expect(ownersIn(text.split(' '), ['Sam', 'Jo', 'Jude']).owner).toBe(owner);
  });
});

describe('what asks without a question mark is answered', () => {
  const rigs = [
    'sam: my rig: 75Ah AGM, fridge 1A average',
    'kim: my rig: 200Ah lithium, fridge 3A average',
  ] as const;
  test.for<[text: string, intent: string]>([
    ['show me what sam has', 'rig'],
    ['wot have u got down for me', 'rig'],
  ])('%s', ([text, intent]) => {
    expect(talk([...rigs, `kim: ${text}`]).last).toMatchObject({
      intent,
      text: expect.stringContaining('rig:'),
    });
  });
  test('thanks and plans are not', () => {
    const { answers } = talk([...rigs, 'kim: how long will mine last?', 'sam: ta, see you at the creek']);
    expect(answers.at(-1)?.text).toBe('');
  });
});

describe('what is understood', () => {
  test('a load that nobody named is a load; an amount to convert is none', () => {
    expect(talk(['jo: 60W at 12V is how many amps?']).last.understood.loads).toEqual([{ powerW: 60 }]);
    expect(talk(['jo: how long would 100Ah AGM run 40W?']).last.understood.loads).toEqual([
      { name: 'load', powerW: 40 },
    ]);
  });

  test('a claim after an answer is weighed, not passed over', () => {
    const { last } = talk([
      'kim: 100Ah gel, 36Ah a day, I reckon 3 days',
      'jo: I say 1 day, who is right?',
      'rob: I say 2 days',
    ]);
    expect(last.intent).toBe('settle');
  });
});
