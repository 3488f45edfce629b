import { expect, test } from 'vitest';
import { afterLine, contextFor, heardFromBot, type Talk } from '#language/talk.ts';

const asked: Talk = afterLine({}, 'run-time', { loads: [{ name: 'fridge' }], durationH: 72 }, 'kim');
const neverRead = () => {
  throw new Error('nothing is to be read');
};

test('a question leaves its name, its keys and its asker', () => {
  expect(asked).toMatchObject({ lastIntent: 'run-time', lastKeys: ['loads', 'durationH'], asked: [] });
  expect(contextFor(asked, 'kim')).toMatchObject({ isOwn: true });
  expect(contextFor(asked, 'lou')).toMatchObject({ isOwn: false });
  expect(contextFor(asked, 'kim')).not.toHaveProperty('lastFrom');
});

test('chatter and manuals leave the question before where it is', () => {
  for (const intent of ['none', 'help', 'privacy', 'forget'])
    expect(afterLine(asked, intent, {}, 'lou')).toBe(asked);
  expect(afterLine(asked, 'unclear', {}, 'lou')).toBe(asked);
});

test('what the bot asks for stands open as kinds, what it tells does not', () => {
  const open = heardFromBot('How big is the battery, in Ah?', asked, neverRead);
  expect(open.asked).toEqual(expect.arrayContaining(['?', 'battery', 'big']));
  expect(open.lastIntent).toBe('run-time');
  expect(heardFromBot('About 40 h on that battery.', asked, neverRead).asked).toEqual([]);
});

test('a rig told once is known ever after', () => {
  const told = afterLine({}, 'rig', { batteries: [{}] }, 'kim');
  expect(afterLine(told, 'run-time', {}, 'lou')).toMatchObject({ hasRig: true, lastFrom: 'lou' });
});
