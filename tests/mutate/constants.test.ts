import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { changed, constantsOf, plainCode } from './constants.ts';

const code = plainCode(`
export const spans: readonly [1, 2] = { likely: [0.5, 0.25], 40: 'tan', nothing: 0 };
const perK = -0.018;
export const ratio = 1 / 58;
export const law = rule({
  formula: 'max(0, 1 - k * 2.5)',
});
export function watts(amps: number, volts = 12): number {
  const cells = Array.from({ length: 6 }, () => spans.likely[1]);
  const why = \`\${Math.round(amps * 10) / 10} A of \${volts > 13 ? 'a full' : \`a \${volts * 7} V\`} battery\`;
  return amps * volts * 1.2 + cells.length + why.length + present(cells.at(-1));
}
`);
const found = constantsOf('a.ts', code);

test.for([
  ['table', ['0.5', '0.25', '40', '0.018', '1', '58', '12']],
  ['formula', ['1 in max(0, 1 - k * 2.5)', '2.5 in max(0, 1 - k * 2.5)']],
  ['whole', ['max(0, 1 - k * 2.5)']],
  ['arithmetic', ['1.2']],
  ['text', ['10', '10', '13', '7']],
] as const)('of the kind %s it finds %j', ([kind, texts]) => {
  expect(found.tried.filter(c => c.kind === kind).map(c => c.text)).toEqual(texts);
});

test('what is left alone is told with the reason', () => {
  expect(found.untried.map(({ text, why }) => [text, why])).toEqual([
    ['0', 'nothing'],
    ['6', 'count of a list'],
    ['1', 'place in a list'],
    ['1', 'place in a list'],
  ]);
});

test('what is declared in a file of grains is no fact', () => {
  const { tried } = constantsOf('src/engine/grain.ts', 'export const dust = 1e-9;');
  expect(tried.map(({ kind }) => kind)).toEqual(['grain']);
});

test.for([
  ['0.25', 1.2, 'likely: [0.5, 0.3]'],
  ['0.018', 0.8, 'perK = -0.0144'],
  ['40', 1.2, "48: 'tan'"],
  ['2.5 in max(0, 1 - k * 2.5)', 0.8, "'max(0, 1 - k * 2)'"],
  ['max(0, 1 - k * 2.5)', 1.2, "'1.2 * (max(0, 1 - k * 2.5))'"],
] as const)('%s times %d gives %s, and nothing else differs', ([text, factor, expected]) => {
  const constant = present(found.tried.find(c => c.text === text));
  const after = changed(code, constant, factor);
  expect(after).toContain(expected);
  const { start, end } = constant;
  expect(after.slice(0, start) + after.slice(after.length - (code.length - end))).toBe(
    code.slice(0, start) + code.slice(end),
  );
});
