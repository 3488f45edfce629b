import { expect, test } from 'vitest';
import { foldWord, lex } from '#language/lex/lex.ts';

/** Tokens as short texts: words and signs as they are folded, numbers as their values. */
const short = (text: string): (string | number)[] =>
  lex(text).map(token => (token.kind === 'number' ? token.value : token.text));

test.for<[text: string, tokens: (string | number)[]]>([
  ['fridge 1.2A, 100Ah', ['fridge', 1.2, 'a', ',', 100, 'ah']],
  ["What's it draw?", ['whats', 'it', 'draw', '?']],
  ["crankin' it, 'hot in' there", ['crankin', 'it', ',', "'", 'hot', 'in', "'", 'there']],
  ['1,200 W', [1200, 'w']],
  ['0,75 A Kühlbox', [0.75, 'a', 'kuhlbox']],
  ['10 000 mAh', [10000, 'mah']],
  ['1 200 W', [1200, 'w']],
  ['1 100ah lithium', [1, 100, 'ah', 'lithium']],
  ['1 100w panel', [1, 100, 'w', 'panel']],
  ['1 500 W kettle', [1500, 'w', 'kettle']],
  ['2 100 Ah', [2, 100, 'ah']],
  ['2 100Ah', [2, 100, 'ah']],
  ['½ a day, 2½ h', [0.5, 'a', 'day', ',', 2.5, 'h']],
  ['.5A', [0.5, 'a']],
  ['٤٠ W and ４０ W', [40, 'w', 'and', 40, 'w']],
  ['6 mm² or 6mm2', [6, 'mm2', 'or', 6, 'mm2']],
  ['DC-DC 12-volt', ['dc', 'dc', 12, 'volt']],
  ['4 × 10 – 12', [4, 'x', 10, '-', 12]],
  ['50% of it', [50, '%', 'of', 'it']],
  ['30°C', [30, '°c']],
  ['LiFePO4', ['lifepo4']],
  ['fri\u200Bdge', ['fridge']],
  ['', []],
])('%s', ([text, tokens]) => {
  expect(short(text)).toEqual(tokens);
});

test('tokens keep their places, gaps, capitals and lines', () => {
  const [fridge, amps, unit, lights] = lex('Fridge 2A\nlights');
  expect(fridge).toMatchObject({ start: 0, end: 6, isCapital: true, isNewLine: true });
  expect(amps).toMatchObject({ start: 7, end: 8, isGlued: false });
  expect(unit).toMatchObject({ isGlued: true, isCapital: true, isNewLine: false });
  expect(lights).toMatchObject({ start: 10, isNewLine: true, isCapital: false });
});

test('thousands told with a point are kept as another value', () => {
  expect(lex('10.000 mAh')[0]).toMatchObject({ value: 10, other: 10000 });
});

test('letters lose their marks', () => {
  expect([foldWord('Kühlschrank'), foldWord('ÆRØ'), foldWord('µ')]).toEqual(['kuhlschrank', 'aero', 'u']);
});

test('time grows with length and no faster', () => {
  const time = (text: string): number => {
    // Processor time: a busy machine takes longer, and no more of it.
    const start = process.cpuUsage();
    lex(text);
    const { user, system } = process.cpuUsage(start);
    return user + system;
  };
  lex('1.2.3,4'.repeat(500));
  const short4k = Math.min(...[1, 2, 3, 4, 5].map(() => time('1.2,3 '.repeat(700))));
  const long = Math.min(...[1, 2, 3, 4, 5].map(() => time('1.2,3 '.repeat(7000))));
  expect(long / short4k).toBeLessThan(60);
});
