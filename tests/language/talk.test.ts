import { expect, test } from 'vitest';
import type { Stated } from '#language/decide/assemble.ts';
import { frameOf } from '#language/decide/frame.ts';
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
  expect({ ...asked, ...open }.lastIntent).toBe('run-time');
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

test('what the bot says with no question before it stands for the question that it answers', () => {
  const stated = { loads: [{ name: 'fridge', currentA: 2 }], durationH: 40 };
  const heard = heardFromBot('Your fridge at 2 A lasts 40 h.', {}, () => ({ intent: 'run-time', stated }));
  expect(heard).toMatchObject({
    lastIntent: 'run-time',
    lastKeys: expect.arrayContaining(['loads', 'durationH']),
    lastValues: expect.arrayContaining([['durationH', 40]]),
    things: ['fridge'],
  });
  const question = heardFromBot('How long must the fridge run?', {}, () => ({ intent: 'run-time', stated }));
  expect(question).not.toHaveProperty('lastValues');
});

test('the words of the last two people’s lines and of the bot’s after them are heard by whose they were', () => {
  const words = (text: string) => contextFor(line({}, 'none', {}, 'x', text), 'x').heard?.[0]?.words;
  const one = line({}, 'run-time', {}, 'ann', 'how long on a 100Ah battery');
  const two = line(one, 'none', {}, 'bob', 'my fridge');
  const three = line(two, 'none', {}, 'ann', 'the kettle, mate');
  const told = { ...three, ...heardFromBot('Two days.', three, neverReadTwice) };
  expect(contextFor(told, 'bob').heard).toEqual([
    { whose: 'own', ago: 1, words: words('my fridge') },
    { whose: 'other', ago: 0, words: words('the kettle, mate') },
    { whose: 'bot', ago: 0, words: words('Two days.') },
  ]);
  expect(contextFor(line(told, 'none', {}, 'bob', 'ta'), 'bob').heard?.map(({ whose }) => whose)).toEqual([
    'other',
    'own',
  ]);
  const rambling = line(
    {},
    'none',
    {},
    'ann',
    Array.from({ length: 60 }, (_, i) => `word${'abcdefghij'[i % 10]}${'klmnop'[i % 6]}`).join(' '),
  );
  expect(contextFor(rambling, 'ann').heard?.[0]?.words.length).toBeLessThanOrEqual(20);
});

test.for<[says: string, text: string, calls: string[]]>([
  ['at the start', 'Bev what does it draw', ['calls:first']],
  ['at the end', "what's it draw Bev?", ['calls:last']],
  ['within', 'mine runs as long as bevs, so Bev wins by a day', ['calls:within']],
  ['nobody', 'what does it draw?', []],
  ['oneself', 'Trev here, what does it draw?', []],
])('who is named among those who wrote lately, %s: %s', ([, text, calls]) => {
  const talk = line(line({}, 'rig', { batteries: [{}] }, 'bev'), 'none', {}, 'trev');
  const { contextNames } = frameOf(recognise(text).mentions, contextFor(talk, 'trev'));
  expect(contextNames.filter(name => name.startsWith('calls:'))).toEqual(calls);
});
