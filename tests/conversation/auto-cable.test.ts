import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import type { Stated } from '#rig/rig.ts';
import { interpretedAs } from './as-heard.ts';

/** What is answered to a size told in these words. */
function told(text: string, cable: NonNullable<Stated['cable']>, units = {}) {
  const { intent, ready, setting } = interpretedAs(
    'cable-size',
    { cable: { lengthM: 5, ...cable } },
    { text },
  );
  return intent.reply(present(ready), { ...setting, units: { ...setting.units, ...units } });
}

describe('a size in mm may be the outside of auto cable', () => {
  test.for<[text: string, areaMm2: number, currentA: number, verdict: string]>([
    ['is 6 mm ok for 15 A over 5 m', 6, 15, 'tight'],
    ['is 6 mm² ok for 15 A over 5 m', 6, 15, 'yes'],
    ['6mm2, 15 A, 5 m, ok?', 6, 15, 'yes'],
    ['is 6 mm ok for 5 A over 5 m', 6, 5, 'yes'],
    ['is 6 mm ok for 60 A over 5 m', 6, 60, 'no'],
    ['is 16 mm ok for 35 A over 5 m', 16, 35, 'yes'],
  ])('%s', ([text, areaMm2, currentA, verdict]) => {
    const reply = told(text, { areaMm2, currentA });
    expect(reply.verdict).toBe(verdict);
    expect(present(reply.lines).join('\n').includes('get real')).toBe(verdict === 'tight');
  });

  test('not where people measure in feet', () => {
    const text = 'is 6 mm ok for 15 A over 5 m';
    expect(told(text, { areaMm2: 6, currentA: 15 }, { length: 'ft' }).verdict).toBe('yes');
  });
});
