import { describe, expect, test } from 'vitest';
import { intents } from '#intents';
import { untoldTable } from '#intents/untold-table.ts';
import { type Turn, talk, value } from './talk.ts';

// What the bot asked for isn't known: usual gear stands in its place, said as such, and nothing is asked again.

const asks = 'ann: how long will it last?';
const ofUsual = /^With typical gear, it lasts about 34 hours \(14–81 hours\)\./;
const answersTo = (...turns: Turn[]) => talk(turns).last.text;

test('each thing that a question may lack has a line that says where it is found', () => {
  const lacking = intents.flatMap(({ name, needs }) =>
    (needs.safeParse({}).error?.issues ?? []).map(({ key }) => [name, key] as const),
  );
  expect(lacking.length).toBeGreaterThan(15);
  expect(lacking.filter(([, key]) => key === undefined || !untoldTable[key])).toEqual([]);
});

describe('lines that say it', () => {
  test.each([
    'dunno',
    'no idea',
    'not sure sorry',
    'how would I know',
    'haven’t a clue',
    "I wouldn't have the foggiest",
    'you tell me',
    'idk',
    'beats me',
    'no idea how big it is',
    "dunno, it came with my brother's van",
    "the label's worn off",
    "it doesn't say",
    "can't find it anywhere",
    'no one told us',
    'none of us know',
    'hard to say',
    'the usual',
    'just a normal one',
    'whatever is typical',
    "what's normal?",
    'same as everyone else',
    'bog standard',
  ])('%s', text => {
    const said = answersTo(asks, `ann: ${text}`);
    expect(said).toMatch(ofUsual);
    expect(said).toContain('Typical is a 100 Ah AGM with a fridge, lights and phones');
    expect(said).toContain('stands on its label: a number with Ah');
    expect(said).not.toContain('?');
  });

  test.each([
    'where do I find that?',
    'how can I tell',
    "where's that written",
    'how do I measure it',
    'how would i read that',
    'what do you mean',
  ])('%s is answered by the place first', text => {
    const said = answersTo(asks, `ann: ${text}`);
    expect(said).toMatch(/^The battery’s size stands on its label/);
    expect(said).toContain('With typical gear, it lasts about 34 hours');
  });
});

describe('lines that say something else', () => {
  test.each([
    "dunno if we're coming saturday",
    'not sure about the weather',
    'no idea where bob is',
    'I don’t know him',
    'can’t find my keys',
    'is that normal?',
    'the usual suspects',
    'where do I find the camp',
    'how do I get to the beach',
    'average day out here',
    'forgot the charger',
    'no worries',
  ])('%s', text => {
    expect(answersTo(asks, `ann: ${text}`)).not.toMatch(/typical gear|on its label/);
  });
});

describe('each question after “dunno”', () => {
  test.each<[asked: string, says: RegExp, finds: RegExp]>([
    ['how long will my fridge last?', /^With a typical 100 Ah AGM, it lasts about 1½ days/, /on its label/],
    ['will it last 3 days?', /^With typical gear, perhaps: it lasts only about 34 hours/, /on its label/],
    [
      'what size battery do i need',
      /^With a typical fridge, lights and phones, about 140 Ah of AGM/,
      /name it/,
    ],
    ['what solar panel do i need?', /^With a typical fridge, lights and phones, a 160 W panel/, /name it/],
    [
      'how much will my panel make?',
      /^With a typical 150 W panel, 150 W makes about 46 Ah a day \(20–79 Ah\)/,
      /on its back/,
    ],
    ['how long to charge my battery', /^With typical gear, about 5 hours on the charger/, /on its label/],
    ['how long to charge it with solar?', /^With typical gear, about 7 hours of full sun/, /on its back/],
    [
      'how long must i drive to charge the battery?',
      /^With typical gear, about 5 hours of driving/,
      /a guess will do/,
    ],
    ['what generator do I need', /^With a typical 20 A charger, an 800 W generator/, /on the plate/],
    ['what inverter do I need', /^Most camps do with 300 to 600 W; a kettle/, /on its case/],
    ['what do I use a day', /^With a typical fridge, lights and phones, about 35 Ah a day/, /name it/],
    ['what do I need to buy?', /^With a typical fridge, lights and phones, you need 150 Ah/, /name it/],
    [
      'panel or generator?',
      /^With a typical fridge, lights and phones, panel for you: about 160 W/,
      /name it/,
    ],
    [
      'can I run it off the starter battery',
      /^With a typical fridge, lights and phones, about 7 hours/,
      /Typical|usual/,
    ],
  ])('%s', (asked, says, finds) => {
    const { last } = talk([`ann: ${asked}`, 'ann: dunno']);
    expect(last.text).toMatch(says);
    expect(last.text).toMatch(finds);
    expect(last.text).not.toContain('?\n');
  });

  test.each<[asked: string, says: RegExp, finds: RegExp]>([
    ['what cable do I need', /^I don’t guess a cable/, /the way the cable will go/],
    ['what cable for 20A?', /^I don’t guess a cable/, /the way the cable will go/],
    ['fuse size?', /^I don’t guess a fuse/, /on the plate/],
    ['how full is my battery', /^How full it is only its volts/, /multimeter/],
    ['how should I wire my panels?', /^That hangs on the figures of your panels/, /Voc/],
    ['what’s the weakest part of my rig', /^What is weak in your rig/, /on its label/],
    ['which lasts longer', /^I can only weigh two things/, /AGM or lithium/],
    ['how long will my cpap last', /^As it’s medical: half as much again[^?]*No guess here/, /on its label/],
  ])('%s is not guessed at', (asked, says, finds) => {
    const { last } = talk([`ann: ${asked}`, 'ann: dunno']);
    expect(last.text).toMatch(says);
    expect(last.text).toMatch(finds);
    expect(last.text).not.toMatch(/\?$|Can you tell me/m);
    expect(last.figures).toEqual({});
  });

  test('an answer that asked for nothing leaves nothing to know', () => {
    expect(answersTo('ann: will my inverter run the kettle', 'ann: dont know')).toBe('');
  });

  test('of two readings the one that can be answered is', () => {
    const { last } = talk(['ann: will the sun keep up with my fridge?', 'ann: dunno']);
    expect(last.intent).toBe('solar-size');
  });
});

describe('who says it', () => {
  test.each<[turns: Turn[], isAnswered: boolean]>([
    [['bob: dunno'], false],
    [["bob: she wouldn't have a clue"], true],
    [["bob: ann doesn't know"], true],
    [['bob: dunno', 'ann: lol bob', 'ann: haven’t got a clue'], true],
    [['bob: anyone seen my thongs?', 'ann: dunno'], false],
    [['bob: what panel do I need?', 'bob: no idea', 'ann: you tell me'], true],
  ])('%j', (turns, isAnswered) => {
    expect(ofUsual.test(answersTo(asks, ...turns))).toBe(isAnswered);
  });

  test('half an hour later it is talk', () => {
    expect(talk([asks, 'ann: dunno'], { apartMin: 31 }).last.text).not.toMatch(ofUsual);
  });
});

describe('afterwards', () => {
  test('a second time nothing is said in a group, and little in private', () => {
    expect(answersTo(asks, 'ann: no idea', 'ann: dunno')).toBe('');
    expect(talk([asks, 'ann: no idea', 'ann: dunno'], { kind: 'private' }).last.text).toBe('No worries.');
  });

  test.each<[tells: Turn, says: RegExp]>([
    ['ann: 200Ah lithium', /^With a typical fridge, lights and phones, it lasts about 4¾ days/],
    ['ann: what if lithium?', /^With typical gear, it lasts about 2½ days/],
    ['ann: what panel do I need?', /^With a typical fridge, lights and phones, a 160 W panel/],
    ['ann: show the working', /Working:/],
  ])('%s', (tells, says) => {
    expect(answersTo(asks, 'ann: dunno', tells)).toMatch(says);
  });

  test('once all is told nothing is typical', () => {
    const { last } = talk([asks, 'ann: dunno', 'ann: 120Ah', 'ann: fridge 1.5A']);
    expect(last.text).not.toContain('typical');
    expect(value(last, 'usableCapacity')).toBeCloseTo(60, 0);
  });

  test('what the line tells counts', () => {
    expect(answersTo(asks, 'ann: dunno, 100Ah maybe')).toMatch(/^With a typical fridge, lights and phones/);
    expect(answersTo(asks, 'ann: dunno, it’s an old agm and a fridge')).toMatch(/^With a typical 100 Ah AGM/);
  });

  test('usual gear is never kept as somebody’s own', () => {
    const { memory } = talk([asks, 'ann: dunno', 'ann: save it as my rig']);
    expect(JSON.stringify(memory)).not.toContain('capacityAh');
  });
});
