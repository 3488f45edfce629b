import { describe, expect, test } from 'vitest';
import { ask } from './ask.ts';

const told = (say: string, before: string[] = []): string => ask({ say, before }).text;

describe('words that are stated, to be confirmed or put right', () => {
  test.each([
    ['so 80% dod is 20% soc yeah?', /^Yes: 80 % DoD leaves 20 % SoC/],
    ['30% soc means 70% dod right?', /^Yes: 30 % SoC is 70 % DoD/],
    ['50% dod means 60% soc right?', /^No: 50 % DoD leaves 50 % SoC/],
    ['so if its at 20% dod its 80% full yeah', /^Yes: 20 % DoD leaves 80 % SoC/],
    ['dod is how much is left, correct?', /^No: .*what is gone/],
    ['so soc is how full it is, yeah?', /^Yes: state of charge/],
    ['so an amp hour is one amp for one hour, right?', /^Yes: an amp hour/],
    ['a watt is volts times amps, yeah?', /^Yes: watts are amps times volts/],
    ['so float comes before absorption yeah?', /^No: bulk comes first/],
    ['absorption comes after bulk, right?', /^Yes: bulk first/],
    ['agm is still lead acid, right?', /^Yes: AGM and gel are lead-acid/],
  ])('%s', (say, says) => expect(told(say)).toMatch(says));

  test('after the words themselves were asked after', () =>
    expect(told('so 80% dod is 20% soc yeah?', ['whats soc', 'and dod?'])).toMatch(/^Yes/));
});

describe('several words asked after at once', () => {
  test.each([
    ['what does bulk absorb float mean', [/Bulk is/, /Absorption is/, /Float is/]],
    ['bulk, absorption and float - what are they', [/Bulk is/, /Absorption is/, /Float is/]],
    ['what is volts amps and watts', [/A volt/, /An amp/, /A watt/]],
    ['what does agm gel and lifepo4 mean', [/An AGM/, /A gel/, /lithium/]],
    ['what is soc and dod', [/^They add up to 100 %/]],
  ])('%s', (say, lines) => {
    for (const line of lines) expect(told(say)).toMatch(line);
  });

  test('a choice between kinds is still one', () =>
    expect(told('agm or gel or lithium?')).not.toMatch(/^An AGM/));
});
