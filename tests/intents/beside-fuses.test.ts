import { describe, expect, test } from 'vitest';
import { ask } from './ask.ts';

const told = (say: string, before: string[] = []): string => ask({ say, before }).text;

describe('a battery that was in backwards', () => {
  test.each([
    'Grandson put the battery in backwards, big spark, now the fridge doesn’t go. what fuse do I put back in?',
    'connected the battery the wrong way round, fuse blew, which fuse size do i need',
    'put the battery in back to front and now nothing works, what fuse?',
    'battery in backwards, what fuse for the fridge',
  ])('%s', say => {
    expect(told(say)).toMatch(/^Not yet: take the battery off/);
    expect(told(say)).toContain('often don’t survive it');
  });
});

test('a cable that is said to be fused for so much is judged by what it allows', () => {
  // 6 mm² carries about 46 A where it lies; the standard size below is 40 A.
  expect(told('You can fuse 6mm² for 50A no worries')).toMatch(/^No: 6 mm² .* it allows 40 A at most/);
  expect(told('we always fuse 16mm2 for 50A, right?')).toMatch(/^Yes: a 50 A fuse guards 16 mm²/);
  expect(told('what fuse for 5A over 6mm2')).not.toMatch(/guards 6 mm²/);
});

test('what is missing of a day’s use is told with what charging loses', () =>
  expect(told('100Ah a day, 250W in perth july, keep up?')).toMatch(
    /what charging loses taken off, it puts back about 36 Ah, 64 Ah a day short/,
  ));

describe('a rule of thumb that two argue about', () => {
  test.each([
    'who’s right, my mate says you can only use half of a leisure battery and I say all of it',
    'Bob reckons you only get 50% out of any battery, I say lithium gives 80. who’s right',
    'settle this: is only half of a battery usable or all of it',
  ])('%s', say =>
    expect(told(say)).toMatch(
      /Lead-acid and AGM give about half|^By its kind: lead-acid and AGM give about half/i,
    ),
  );
});
