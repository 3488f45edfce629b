import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { places } from './places.ts';
import { Play } from './play.ts';
import { sequences } from './sequences.ts';

/** Pictures are drawn elsewhere: a PNG's head of 1200 × 675 will do. */
vi.mock('#answer/chart/png.ts', () => ({
  png: async () => Buffer.from('89504e470d0a1a0a0000000d49484452000004b0000002a3', 'hex'),
}));

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  vi.useRealTimers();
});

const names = Object.keys(sequences);

test('there are 150 scenes and more', () => {
  expect(places.length * names.length).toBeGreaterThanOrEqual(150);
});

describe.each(places)('$name', place => {
  test.each(names)('%s', async name => {
    const play = new Play(place);
    await present(sequences[name])(play);
    await play.settle();
    expect(play.unanswered).toEqual([]);
    expect(play.leaked).toEqual([]);
    expect(play.refused).toEqual([]);
    expect(play.s.errors()).toEqual([]);
    // Every tap had its end, and nothing waits.
    expect([...play.s.world.openPresses]).toEqual([]);
    expect(await play.s.store.due()).toEqual([]);
  });
});
