import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

const danas = 'Dana: we are in Broome in July, what will a 200W panel make?' as const;

describe('a group camps in one place', () => {
  test('a question about the sun is of where somebody said they are, and says whose words that is', () => {
    const { last } = talk([danas, 'Cy: what panel for 40Ah a day?']);
    expect(last.text).toMatch(/in Broome in July/);
    expect(last.text).toMatch(/From Dana.s question: in Broome/);
  });

  test('not where the asker told another place, or the hours of sun', () => {
    expect(talk([danas, 'Cy: what panel for 40Ah a day in Hobart in June?']).last.text).not.toMatch(/Broome/);
    expect(talk([danas, 'Cy: what panel for 40Ah a day, 4 peak sun hours?']).last.text).not.toMatch(/Broome/);
  });

  test('not the next day, nor for what no sun bears on', () => {
    const { memory } = talk([danas], { at: '2026-01-15T06:00:00Z' });
    const later = talk(['Cy: what panel for 40Ah a day?'], { memory, at: '2026-01-15T19:00:00Z' });
    expect(later.last.text).not.toMatch(/Broome/);
    expect(talk([danas, 'Cy: what fuse for a 4A fan?']).last.text).not.toMatch(/Broome/);
  });

  test('one’s own earlier place goes without a name', () => {
    const { last } = talk([danas, 'Dana: what panel for 40Ah a day?']);
    expect(last.text).toMatch(/in Broome in July/);
    expect(last.text).not.toMatch(/question: in Broome/);
  });
});
