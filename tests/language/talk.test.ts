import { expect, test } from 'vitest';
import type { Stated } from '#language/decide/assemble.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { afterLine, contextFor, heardFromBot, type Talk } from '#language/talk.ts';

const line = (talk: Talk, intent: string, stated: Stated, from: string, text = 'so be it'): Talk =>
  afterLine(talk, intent, stated, from, recognise(text).mentions);
const asked = line({}, 'run-time', { loads: [{ name: 'fridge' }], durationH: 72 }, 'kim');
const neverRead = () => {
  throw new Error('nothing is to be read');
};

const neverReadTwice = () => ({ intent: 'none', stated: {} });

test('a question leaves its name, its keys and its asker', () => {
  expect(asked).toMatchObject({ lastIntent: 'run-time', lastKeys: ['loads', 'durationH'], asked: [] });
  expect(contextFor(asked, 'kim')).toMatchObject({ isOwn: true });
  expect(contextFor(asked, 'lou')).toMatchObject({ isOwn: false });
  expect(contextFor(asked, 'kim')).not.toHaveProperty('lastFrom');
});

test('chatter and manuals leave the question before where it is', () => {
  for (const intent of ['none', 'help', 'privacy', 'forget'])
    expect(line(asked, intent, {}, 'lou')).toMatchObject({ lastIntent: 'run-time', lastFrom: 'kim' });
  expect(line(asked, 'unclear', {}, 'lou')).toMatchObject({ lastIntent: 'run-time', lastFrom: 'kim' });
});

test('what the bot asks for stands open as kinds, what it tells does not', () => {
  const open = heardFromBot('How big is the battery, in Ah?', asked, neverRead);
  expect(open.asked).toEqual(expect.arrayContaining(['?', 'battery', 'big']));
  expect(open.lastIntent).toBe('run-time');
  expect(heardFromBot('About 40 h on that battery.', asked, neverRead).asked).toEqual([]);
});

test('a rig told once is known ever after', () => {
  const told = line({}, 'rig', { batteries: [{}] }, 'kim');
  expect(line(told, 'run-time', {}, 'lou')).toMatchObject({ hasRig: true, lastFrom: 'lou' });
});

test('the last two lines leave what they meant as dangers go', () => {
  const first = afterLine({}, 'none', {}, 'ann', [], ['heater', 'inside']);
  const second = afterLine(first, 'none', {}, 'bob', [], ['symptom']);
  expect(second.meant).toEqual(['1symptom', '2heater', '2inside']);
  expect(afterLine(second, 'none', {}, 'ann', []).meant).toEqual(['2symptom']);
});

test('the last two lines leave what they look like, whatever they were', () => {
  const first = line({}, 'settle', {}, 'ann', 'the fan runs 11 hours on that, I reckon');
  const second = line(first, 'none', {}, 'bob', 'nah, 8');
  expect(second.said).toEqual(expect.arrayContaining(['1short', '1no', '1number', '2line', '2h', '2says']));
  expect(contextFor(second, 'bob')).toMatchObject({ wroteLast: true });
  expect(contextFor(second, 'ann')).toMatchObject({ wroteLast: false });
  const third = { ...second, ...heardFromBot('About 9 hours.', second, neverReadTwice) };
  expect(third.said?.filter(sign => sign.startsWith('1'))).toEqual(['1bot']);
});
