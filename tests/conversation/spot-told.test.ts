import { describe, expect, test } from 'vitest';
import { withSpotTold } from '#conversation/told/spot-told.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { talk, value } from './talk.ts';

const spot = (text: string, facts: Stated = {}): Stated => withSpotTold(facts, recognise(text));

describe('a latitude told in degrees', () => {
  test.for<[text: string, latitudeDeg: number | undefined, longitudeDeg?: number]>([
    ['at 35° S in june', -35],
    ['at 35 degrees south', -35],
    ['60°N in december', 60],
    ['latitude 52 N', 52],
    ['latitude -35, in june', -35],
    ['at 33.9S 151.2E', -33.9, 151.2],
    ['33.9° S, 18.4° W', -33.9, -18.4],
    // North or south is half a year apart: without it there is no latitude.
    ['latitude 35 in june', undefined],
    ['a 4S pack of 100 Ah', undefined],
    ['at 35 degrees', undefined],
    ['95° N', undefined],
    ['two of 12 V in series', undefined],
  ])('%s', ([text, latitudeDeg, longitudeDeg]) => {
    expect(spot(text)).toEqual({
      ...(latitudeDeg !== undefined && { latitudeDeg }),
      ...(longitudeDeg !== undefined && { longitudeDeg }),
    });
  });

  test('is no temperature, no panel and no name of a place beside it', () => {
    const facts = { ambientC: 60, solar: [{ powerW: 200 }, { powerW: 60 }], place: '°n', month: 12 };
    expect(spot('200 W at 60°N in december', facts)).toEqual({
      solar: [{ powerW: 200 }],
      month: 12,
      latitudeDeg: 60,
    });
    expect(spot('60 W at 60°N, 20 °C', { solar: [{ powerW: 60 }], ambientC: 20 })).toEqual({
      solar: [{ powerW: 60 }],
      ambientC: 20,
      latitudeDeg: 60,
    });
  });

  test('an answer for it says so, and winter is there when it is summer here', () => {
    const at = (side: string) => talk([`ann: what will my 200W panel make at 35° ${side} in june?`]).last;
    expect(at('S').text).toContain('at 35° S in June');
    expect(value(at('N'), 'dailyYield')).toBeGreaterThan(1.8 * value(at('S'), 'dailyYield'));
  });
});

test("the sun is known of a place whose name begins with a person's", () => {
  const { last } = talk(['ann: alice springs 160w what will it make in june']);
  expect(last.understood.place).toBe('alice springs');
  expect(last.text).not.toContain("don't know where");
});
