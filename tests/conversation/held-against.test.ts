import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Turn, talk } from './talk.ts';

describe('amps read off panels after what they should give', () => {
  const noon: Turn = 'Al: what should a 200w panel put out at midday in amps';
  test.each([
    ['im only seeing 4', /^A bit low for clear noon: 4 A, as 200 W give about 10 A at best/],
    ['ours shows 2.1A', /^Low for clear noon: 2\.1 A/],
    ['getting 8', /^Yes, about right: 8 A is fine/],
  ])('“%s”', (text, says) => {
    expect(talk([noon, `Al: ${text}`]).last.text).toMatch(says);
  });
  test('are no watts, and no panels', () => {
    expect(talk([noon, 'Al: and if i add another 2']).last.text).not.toMatch(/clear noon: 2 A/);
  });
  test('are asked of the sun, not of a charge', () => {
    const { last } = talk(['Sam: my panel is 160w', 'Sam: how many amps should i see at noon']);
    expect(last.text).toMatch(/^About 4\.9 to 8\.1 A about clear noon/);
  });
});

describe('a charge judged for the kind told next', () => {
  test.each([
    [
      'Ana: is 14.6v too high for my battery',
      'its lithium 4 cell',
      /^All fine for lithium: 14\.6 V is absorption/,
    ],
    ['Al: charger puts out 14.8, is that ok?', "battery's a gel", /^Too high for gel/],
    [
      'Di: solar controller is at 14.4 is that right',
      'what if it were a flooded one',
      /^All fine for (?:wet|flooded|a wet)/,
    ],
  ])('%s, %s', (asked, text, says) => {
    const who = asked.slice(0, asked.indexOf(':'));
    expect(talk([asked as Turn, `${who}: ${text}`]).last.text).toMatch(says);
  });
  test('and for another', () => {
    const { last } = talk([
      'Ana: is 14.6v too high for my battery',
      'Ana: its lithium 4 cell',
      'Ana: and if it was agm?',
    ]);
    expect(last.intent).toBe('charge-level');
    expect(last.text).toMatch(/^All fine for AGM/);
  });
});

describe('a battery that went down overnight', () => {
  const readings: Turn[] = ['Sam: battery is 12.4 this morning', 'Sam: it was 12.8 last night'];
  test('with little on is told for what it is, and no cut-out', () => {
    const { answers } = talk([
      ...readings,
      'Sam: didnt run anything but the lights and the fridge',
      'Sam: is it dying?',
    ]);
    expect(present(answers[2]).text).toMatch(/^That’s usual: 12\.8 to 12\.4 V/);
    expect(present(answers[3]).text).toMatch(/^Most likely not: 12\.8 to 12\.4 V/);
  });
  test('by a lot may be', () => {
    const { last } = talk([
      'Cy: agm says 11.9 now',
      'Cy: it was 12.8 before bed',
      'Cy: is it on the way out',
    ]);
    expect(last.text).toMatch(/^It may be: 12\.8 to 11\.9 V/);
  });
  test('a fault told by itself stays one', () => {
    const { last } = talk([...readings, 'Sam: why does the fridge cut out at night']);
    expect(last.intent).toBe('fault');
  });
});
