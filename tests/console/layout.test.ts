import { expect, test } from 'vitest';
import { meaning } from '#console/console.ts';
import { layout, wrap } from '#console/layout.ts';

const plain = { columns: 40, isColoured: false };
const answer = {
  text: 'About 42 hours.\nOn the usable half of 100 Ah at 12 V, all day.',
  next: ['why?', 'make it 5 days'],
};

test('an answer in a narrow terminal', () => {
  expect(layout(answer, plain)).toBe(
    [
      '',
      '  About 42 hours.',
      '  On the usable half of 100 Ah at 12 V,',
      '  all day.',
      '',
      '  1  why?',
      '  2  make it 5 days',
      '',
      '',
    ].join('\n'),
  );
});

test('the first line is bold and the next questions faint where there is colour', () => {
  const shown = layout(answer, { ...plain, isColoured: true });
  expect(shown).toContain('\u001b[1m  About 42 hours.\u001b[22m');
  expect(shown).toContain('\u001b[2m  1  why?\u001b[22m');
});

test('control codes in somebody’s words do nothing to the terminal', () => {
  expect(layout({ text: 'rig of \u001b[31mred\u0007', next: [] }, plain)).toBe('\n  rig of red \n\n');
});

test('no line is longer than the terminal, unless a word is', () => {
  const text = 'a fridge of 1.2 A on a battery of 100 Ah, three days and nights, without sun';
  for (const line of wrap(text, 30, '  ').split('\n')) expect(line.length).toBeLessThanOrEqual(30);
});

test.each([
  ['1', 'why?'],
  [' 2 ', 'make it 5 days'],
  ['3', '3'],
  ['12', '12'],
  ['/help', 'help'],
  ['60/12', '60/12'],
])('typed %s means %s', (line, means) => {
  expect(meaning(line, answer.next)).toBe(means);
});
