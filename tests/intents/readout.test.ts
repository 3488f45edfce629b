import { describe, expect, test } from 'vitest';
import { ask } from './ask.ts';

const told = (say: string, before: string[] = []): string => ask({ say, before }).text;

describe('all that a monitor shows is read aloud', () => {
  test.each([
    [
      'Monitor says 13.1V 67% -8.2A 14h. battery 170ah. what’s it all telling me',
      // 67 % of 170 Ah is 113.9 Ah; over 8.2 A that is 13.9 h.
      [/^About 114 Ah left, 8\.2 A going out: about 14 hours/, /The hours agree/, /if it’s lithium/],
    ],
    [
      'my shunt shows 12.4V, 55%, -4.5A, 12h to go, what does that all mean',
      // 12 h × 4.5 A / 0.55 = 98 Ah.
      [/^55 % full, 4\.5 A going out/, /a battery of about 98 Ah/, /if it’s lead-acid/],
    ],
    [
      'display reads 13.3V 92% +12A, 100ah lithium, explain please',
      [/^About 92 Ah left, 12 A going in: 40 minutes/],
    ],
    [
      'monitor: 13.0V, 45%, -20A, 4h 30m. 200Ah lithium. does that make sense',
      [
        /^About 90 Ah left, 20 A going out/,
        /The hours agree: 4\.5 h × 20 A is 90 Ah/,
        /Stop at 20 % with lithium/,
      ],
    ],
    ['monitor shows 13.2V and 72%, 6.1 amps going out. how do i read this', [/^72 % full, 6\.1 A going out/]],
    ['my app says 11.9v 80% 5A out on my 120Ah agm, does that make sense', [/The volts don’t agree/]],
    ['the screen says 12.8v 100% 0.0A. what am i looking at', [/^100 % full, nothing in or out/]],
  ])('%s', (say, lines) => {
    for (const line of lines) expect(told(say)).toMatch(line);
  });

  test('hours that don’t go with the rest are said not to', () => {
    const text = told('shunt says 12.9V 30% -6A 5h, what does that tell me', ['200Ah lithium']);
    expect(text).toMatch(/^About 60 Ah left, 6 A going out: about 10 hours/);
    expect(text).toContain('The hours don’t agree');
  });
});

describe('a level claimed of volts, without a monitor', () => {
  test.each([
    [
      '13.3V means my lithium’s 90% full',
      /^90 % could be, no more: 13\.3 V at rest on lithium is anything from 65 to 95 %/,
    ],
    ['12.5V means agm is 80% full', /^80 % fits: 12\.5 V at rest on AGM/],
  ])('%s', (say, says) => {
    expect(told(say)).toMatch(says);
    expect(told(say)).not.toMatch(/shunt’s percent/);
  });

  test('a screen’s per cent is still held to drift', () =>
    expect(told('monitor says 13.2V and 60% lithium, which is right')).toMatch(/shunt’s percent drifts/));
});
