import { describe, expect, test } from 'vitest';
import { scan } from '#language/scan.ts';

/** A message's tokens: numbers as numbers, the rest as text. */
const tokens = (text: string) =>
  scan(text).map(token => (token.kind === 'number' ? token.value : token.text));

describe('scan', () => {
  test.for<readonly [string, readonly (string | number)[]]>([
    ['fridge 1.2A', ['fridge', 1.2, 'a']],
    ['1,2 A', [1.2, 'a']],
    ['1,000 W', [1000, 'w']],
    ['12,500.5', [12500.5]],
    ['1,2,3', [1, ',', 2, ',', 3]],
    ['.9a', [0.9, 'a']],
    ['100ah.3 days', [100, 'ah', '.', 3, 'days']],
    ['2½A', [2.5, 'a']],
    ['¾', [0.75]],
    ['2x100ah', [2, 'x', 100, 'ah']],
    ['2 × 3w', [2, 'x', 3, 'w']],
    ['6h30', [6, 'h', 30]],
    ['18:30', [18.5]],
    ['१०० Ah', [100, 'ah']],
    ['１２Ｖ', [12, 'v']],
    ['𝟏𝟐V', [12, 'v']],
    ['12v/100ah', [12, 'v', '/', 100, 'ah']],
    ['dc-dc', ['dc', 'dc']],
    ['12-volt', [12, 'volt']],
    ['10-12', [10, '-', 12]],
    ['b2b', ['b2b']],
    ['lifepo4', ['lifepo4']],
    ['6mm2 6mm² b&s', [6, 'mm2', 6, 'mm2', 'b&s']],
    ["don't sam’s", ['dont', 'sams']],
    ['40% 35°C', [40, '%', 35, '°c']],
    ['<i>pump</i> __light__ **fan**', ['pump', 'light', 'fan']],
    ['[cooler](tg://user?id=1) 1A', ['[', 'cooler', 1, 'a']],
    ['😂🔥', []],
    ['', []],
  ])('%s', ([text, want]) => {
    expect(tokens(text)).toEqual(want);
  });

  test('spans point into the message', () => {
    const text = 'a 2½A fridge';
    expect(scan(text).map(token => text.slice(token.from, token.to))).toEqual(['a', '2½', 'A', 'fridge']);
  });

  test('an apostrophe s is remembered', () => {
    expect(scan("dad's")[0]?.hasApostrophe).toBe(true);
  });
});
