import { describe, expect, test } from 'vitest';
import { heardNothing } from '#conversation/hear.ts';
import { asksWhatItChanges, sideAskedIn } from '#conversation/turns/side-asked.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { type Turn, talk, value } from './talk.ts';

const heard = (text: string, facts: Stated = {}) => ({
  ...heardNothing(),
  recognised: recognise(text),
  facts,
});

describe('which side a short line asks for', () => {
  test.each([
    ['so what does that change?', 'change'],
    ['does that make much difference?', 'change'],
    ['how big a difference is it', 'change'],
    ['what do I gain by it', 'change'],
    ["how's that compare with before", 'change'],
    ['how much extra is that', 'change'],
    ['which of us lasts longer', 'rivals'],
    ['so how much longer is mine than hers?', 'rivals'],
    ["what's the difference between us", 'rivals'],
    ["who's better off", 'rivals'],
    ['how does mine compare with his', 'rivals'],
    ['how far ahead am I', 'rivals'],
    ['by how much', 'apart'],
    ['how much longer is that', 'apart'],
    ["what's the gap", 'apart'],
    ['is it? what should I use', 'instead'],
    ['what would you use then', 'instead'],
    ["what's the right one then", 'instead'],
    ['so which one do I need', 'instead'],
    ['well what do I want instead', 'instead'],
    ['not good. what is?', 'instead'],
    ['how many of those would flatten it', 'goes'],
    ['how many cups is that', 'goes'],
    ['how often can I do that', 'goes'],
    ['how many rounds till its flat', 'goes'],
    ['what angle does it need to be', 'angle'],
    ['which way should they face', 'angle'],
    ['how steep should I set it', 'angle'],
    ['where should I aim it', 'angle'],
    ['how many degrees should it be', 'angle'],
  ])('%s', (text, side) => {
    expect(sideAskedIn(heard(text))).toBe(side);
  });

  test.each([
    'how much longer will it last',
    'how many hours is that',
    'what do I need to make it last longer',
    "who's right",
    'is lithium better than agm',
    'what if it was tilted',
    'how many panels do I need',
    'how often do I have to charge it',
    'what would that cost',
    'which controller should I use',
    'what do I need for 20 A',
    'why',
  ])('none: %s', text => {
    expect(sideAskedIn(heard(text))).toBeUndefined();
  });

  test('a line that tells something asks of what it tells', () => {
    const lithium: Stated = { batteries: [{ chemistry: 'lfp' }] };
    expect(sideAskedIn(heard('how much longer is that', lithium))).toBeUndefined();
    expect(asksWhatItChanges(heard('how much longer with lithium', lithium))).toBe(true);
    expect(asksWhatItChanges(heard('how much longer with lithium'))).toBe(false);
  });
});

const kev: Turn = 'kev: how long will a 60Ah agm run a 1.2A fridge?';
const jo: Turn = 'jo: how long will a 120Ah lithium run a 1.5A fridge?';
const first = (...turns: Turn[]): string => talk(turns).last.text.split('\n')[0] ?? '';

describe('two answers held against one another', () => {
  test.each(['which of us lasts longer', "what's the difference between us", 'by how much'])('%s', text => {
    expect(first(kev, jo, `jo: ${text}`)).toBe(
      'Yours lasts 1¾ days longer: about 2¾ days, Kev’s about 1 day.',
    );
  });

  test('told to the other it is the other’s', () => {
    expect(first(kev, jo, 'kev: so how much longer is hers than mine?')).toBe(
      'Jo’s lasts 1¾ days longer: about 2¾ days, yours about 1 day.',
    );
  });

  test('of one answer nothing is held against another', () => {
    expect(first(kev, 'kev: which of us lasts longer')).not.toMatch(/longer: /);
  });
});

describe('what a change has changed', () => {
  const lithium: Turn = 'kev: what if lithium';
  test.each(['so what does that change?', 'how much longer is that', 'what do I gain'])('%s', text => {
    expect(first(kev, lithium, `kev: ${text}`)).toBe('From about 1 day to about 1¾ days: ¾ day longer.');
  });

  test('a yes or no is said where it is asked for', () => {
    expect(first(kev, lithium, 'kev: does that make much difference?')).toMatch(/^Yes, from about 1 day to/);
  });

  test('what changes next to nothing is said to', () => {
    expect(first(kev, 'kev: what if the fridge draws 1.22A', 'kev: does that make much difference?')).toMatch(
      /^Not much: from about 2\d hours to about 2\d hours\.$/,
    );
  });

  test('of a cable told it is what it loses', () => {
    const turns: Turn[] = ['ann: is 4mm2 ok for 20A over 5m?', 'ann: what about 10mm2?'];
    expect(first(...turns, 'ann: does that make much difference?')).toBe(
      'Yes, from 8.7 % to 3.4 %: 5.3 % less.',
    );
  });

  test('where nothing has been changed, the answer stands as it was', () => {
    expect(first(kev, 'kev: so what does that change?')).not.toMatch(/^From/);
  });
});

describe('what would do in place of what won’t', () => {
  test.each<[Turn, RegExp]>([
    [
      'ann: is 2.5mm2 cable ok for 20A over 6m?',
      /^10 mm² or thicker \(8 B&S \(AWG\) in the shop\), for 20 A over 6 m\.$/,
    ],
    ['ann: is a 10A fuse ok for a 15A pump?', /^A 20 A fuse \(blade, yellow\), on 2\.5 mm² or thicker\.$/],
    ['ann: is a 60A fuse ok on 6mm2 cable?', /^At most 40 A on 6 mm² \(blade/],
    ['ann: can my 600W inverter run a 1200W toaster?', /^A 1500 W inverter handles it easily\.$/],
    ['ann: 120Ah agm, 30Ah a day, will it last 4 days?', /^For 4 days you need about 240 Ah of battery/],
  ])('%s', (asked, says) => {
    expect(first(asked, 'ann: what would you use then?')).toMatch(says);
    expect(first(asked, 'ann: so which one do I need')).toMatch(says);
  });

  test('what does is said to do', () => {
    const asked: Turn = 'ann: is 10mm2 cable ok for 20A over 5m?';
    expect(first(asked, 'ann: what would you use then?')).toMatch(/10 mm² loses 3\.4 %/);
  });
});

describe('how many goes', () => {
  test.each<[Turn, RegExp]>([
    [
      'ann: will a 2000W inverter run a 1100W microwave for 5 minutes on a 200Ah lithium?',
      /^About 1\d times \(.*\), 5 minutes each/,
    ],
    [
      'ann: will a 1500W inverter run a 1000W toaster on a 100Ah lithium?',
      /^About 17 times .*, 3 minutes each/,
    ],
    ['ann: will a 1500W inverter run a 1000W kettle on a 100Ah lithium?', /^About 31 cups/],
  ])('%s', (asked, says) => {
    const { last } = talk([asked, 'ann: how many of those would flatten it?']);
    expect(last.intent).toBe('run-time');
    expect(last.text).toMatch(says);
  });
});

describe('how panels stand to the sun', () => {
  const mildura: Turn = 'ann: what does a 200W panel make in Mildura in july?';
  test('the angle for that place and month', () => {
    const { last } = talk([mildura, 'ann: what angle does it need to be']);
    expect(last.text).toMatch(/^About 55° from flat, facing north, for the midday sun in Mildura in July\./);
    expect(last.text).toMatch(/About 34° the year round: 49° in winter, 19° in summer\./);
    expect(value(last, 'tilt')).toBe(55);
  });

  test('and the way that they face', () => {
    expect(first(mildura, 'ann: which way should they face')).toMatch(/^North, tilted about 55° from flat/);
  });

  test('nearly flat where the sun stands overhead', () => {
    expect(
      first('ann: what does a 200W panel make in Exmouth in january?', 'ann: what angle should it be'),
    ).toMatch(/^Flat, or nearly/);
  });

  test('without a place, by the latitude', () => {
    expect(first('ann: what does a 200W panel make?', 'ann: what angle should it be')).toMatch(
      /^About as many degrees as your latitude/,
    );
  });
});

describe('amps at noon', () => {
  test.each([
    'what amps should I be seeing at midday',
    "what's the most amps it puts out",
    'how many amps at lunchtime',
    'what should the controller read in full sun',
  ])('%s', text => {
    const asked: Turn = 'ann: what does a 160W panel with a pwm controller make in Dubbo in june?';
    expect(first(asked, `ann: ${text}`)).toMatch(
      /^About 4\.4 to 7\.3 A about clear noon on a PWM controller/,
    );
  });
});

describe('another thing on a run of its own', () => {
  const pump: Turn = 'ann: what cable for a 15A pump 4 metres away?';
  test.each([
    ['and for the heater? its 10 amps same distance', 10],
    ['and the fan, 5A, same run', 5],
    ['what about the fridge at 8 amps, same length', 8],
    ['and for a 30A winch just as far', 30],
    ['and a 5A light as well', 20],
    ['what if I add a 5A light', 20],
  ])('%s', (text, currentA) => {
    expect(first(pump, `ann: ${text}`)).toMatch(new RegExp(` at ${currentA} A over 4 m\\.$`));
  });

  test('a fuse of its own, too', () => {
    expect(first('ann: what fuse for a 15A pump?', 'ann: and for the 8A fridge?')).toMatch(/^A 10 A fuse/);
  });
});
