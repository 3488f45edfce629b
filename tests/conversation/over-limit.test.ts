import { expect, test } from 'vitest';
import { type Turn, talk } from './talk.ts';

const first = (...turns: readonly Turn[]): string => talk(turns).last.text.split('\n')[0] ?? '';

test.for<[text: Turn, says: RegExp]>([
  ['kim: my 2000W inverter sits on 8mm2 cable 2 m long, what do you reckon?', /8 mm² carries|8 mm² gets hot/],
  ['kim: 100Ah lithium with a 50A BMS, what happens if I run a 1200W kettle?', /is more than the 50 A/],
  ['kim: 60A dcdc into a lithium whose BMS takes 50A, ok?', /60 A is more than the 50 A/],
  ['kim: can a cig socket run a 300W inverter?', /lighter socket/],
])('a limit that is passed is named, with by how much: %s', ([text, says]) => {
  expect(first(text)).toMatch(says);
});

test.for<Turn>([
  'kim: the plug on my inverter lead has gone brown and melty, only the kettle runs on it',
  'kim: can I use jump leads to run my 2000W inverter for a minute?',
  'kim: the lead to the fridge gets so hot I cannot hold it',
])('where none was worked out as passed, no such thing is said: %s', text => {
  const { last } = talk([text]);
  expect(last.hazards).toContain('over-current');
  expect(last.text).not.toMatch(/^No: (?:that|it) is more than/);
});

test('what gets hot is to be switched off first', () => {
  expect(first('kim: the lead to the fridge gets so hot I cannot hold it')).toMatch(/^Switch it off/);
});
