import { describe, expect, test } from 'vitest';
import { hazardAnswer } from '#answer/hazards.ts';
import { type Turn, talk } from './talk.ts';

const { first, shortly = '', instead } = hazardAnswer('medical');

describe('what a medical device asks for', () => {
  const turns: readonly Turn[] = [
    'kim: how long does a 4 A cpap run on 100Ah lithium?',
    'kim: and a 2 A one?',
  ];

  test('is said in full once, and then in a few words, in the first three lines', () => {
    const { answers } = talk(turns);
    const [one, two] = answers.map(({ text }) => text.split('\n'));
    expect(one?.slice(0, 3)).toContain(first);
    expect(two?.slice(0, 3)).toContain(shortly);
    expect(two).not.toContain(instead);
  });

  test('is said in full again the next day', () => {
    const { last } = talk(turns, { apartMin: 24 * 60 });
    expect(last.text).not.toContain(shortly);
  });

  test('stands behind what was noted', () => {
    const { last } = talk(['kim: my rig: 200Ah lithium, 400W solar and a cpap that pulls 4 amps']);
    expect(last.text).toMatch(/^Noted\. /);
    expect(last.text.split('\n').slice(0, 3)).toContain(first);
  });
});

describe('a rig', () => {
  const rig = 'kim: my rig: 100Ah lithium, 160W solar';
  test.for<[text: Turn, says: RegExp]>([
    ['kim: add a fridge 3.5A to my rig', /^Added\. /],
    ['kim: change my battery to 120Ah', /^Changed\. /],
    ['kim: remove the solar from my rig', /^Changed\. /],
    ['kim: my rig: 100Ah lithium', /^Noted\. /],
  ])('%s', ([text, says]) => {
    expect(talk([rig, text]).last.text).toMatch(says);
  });
});

test.for<[text: Turn, says: RegExp]>([
  ['kim: my rig: 25 amp dcdc in the ute, 105ah agm in the canopy', /105 Ah AGM; /],
  ['kim: my rig: 70Ah agm starter battery', /70 Ah AGM starter battery/],
])('where a battery stands tells what it is for: %s', ([text, says]) => {
  expect(talk([text]).last.text).toMatch(says);
});

test('a power station keeps nothing back but its losses', () => {
  const { last } = talk(['kim: 500Wh power station at 40%, how long will it run a 10W light?']);
  expect(last.figures.runTime?.value).toBeCloseTo(18, 0);
  expect(last.text).toContain('a power station');
});

test('a level is not said to have counted a fridge', () => {
  const { last } = talk(['kim: my rig: 100Ah agm, fridge 3A', 'kim: battery reads 12.4V, how full is it?']);
  expect(last.text).not.toContain('Counted:');
});

test.for<Turn>(['kim: so what does that change?', 'kim: how many hours is that then?'])(
  'what is asked openly has no yes or no before it: %s',
  text => {
    const { last } = talk(['kim: will 100Ah lithium run a 2A fridge for 3 days?', text]);
    expect(last.text).not.toMatch(/^(?:Yes|No)[,:]/);
  },
);

test('the heat of a battery is nobody else’s weather', () => {
  const { last } = talk([
    'ann: my battery is sitting at 52 degrees in the boot',
    'kim: how long does 100Ah agm run a 2A fridge?',
  ]);
  expect(last.text).not.toContain('52 °C');
});

test('amps out of the battery are said to be that', () => {
  const { last } = talk(['kim: shunt shows -6.2A and 13.0V what does that mean']);
  expect(last.text).toMatch(/^6\.2 A is going out/);
});

test.for<[text: Turn, says: RegExp]>([
  ['kim: hydrometer reads 1.190 in all cells, how full is that?', /^About 50 % full/],
  ['kim: hydrometer says 1.27, is that full?', /^Full/],
  ['kim: is 1.12 on the hydrometer ok?', /^Flat/],
  ['kim: hydrometer shows 1.25 and one cell 1.18, is that ok?', /^The cells differ/],
])('a hydrometer tells the level: %s', ([text, says]) => {
  expect(talk([text]).last.text).toMatch(says);
});
