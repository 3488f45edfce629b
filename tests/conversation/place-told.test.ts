import { describe, expect, test } from 'vitest';
import { withPlaceTold } from '#conversation/told/place-told.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { talk } from './talk.ts';

describe('a place is told with all of its name', () => {
  test.for<[text: string, read: string, place: string]>([
    ['160W in Alice Springs in June', 'Springs', 'alice springs'],
    ['camped at Mount Isa', 'Isa', 'mount isa'],
    ['160W in Oslo in June', 'Oslo', 'Oslo'],
    ['at Nowhere Creek in June', 'Creek', 'Creek'],
  ])('%s', ([text, read, place]) => {
    expect(withPlaceTold({ place: read }, recognise(text)).place).toBe(place);
  });

  test('and its sun is known', () => {
    const { last } = talk(['ann: alice springs 160w what will it make in june']);
    expect(last.understood.place).toBe('alice springs');
    expect(last.text).not.toContain("don't know where");
  });
});
