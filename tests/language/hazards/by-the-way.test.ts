import { describe, expect, test } from 'vitest';
import type { HazardCode } from '#rig/hazard-codes.ts';
import { dangersIn } from './dangers.ts';

const asked = [
  'Fridge 1.5 A, lights 10 W for 4 hours a night, 120 Ah AGM, 200 W of panels. How many days in Broome in July?',
  'What would 300 W of solar give me a day at Esperance in October?',
  'How many watt-hours a day does a 60 W fridge use at 40 percent?',
  'How long will a 20 A charger need to fill a 100 Ah AGM from half?',
];

const told: readonly (readonly [danger: string, code: HazardCode])[] = [
  ['The safety switch kept tripping, so I bridged it out.', 'mains-wiring'],
  ['The heater’s exhaust has come off under the bunk.', 'carbon-monoxide'],
  ['Our charcoal burner is in the tent with us for the night.', 'carbon-monoxide'],
  ['The battery has a bulge on both sides since summer.', 'battery-fire'],
  ['There is no fuse on it, the wire sits on the post.', 'no-fuse'],
  ['The genny runs in the annexe because of the rain.', 'generator-inside'],
  ['I put a 30 A fuse in as the 15 kept blowing.', 'bigger-fuse'],
  ['It smells of gas by the stove.', 'gas'],
];

describe('a danger told by the way is seen, before or after all that is asked and stated', () => {
  test.for(told)('%s', ([danger, code]) => {
    for (const question of asked) {
      expect(dangersIn(`${danger} ${question}`)).toContain(code);
      expect(dangersIn(`${question} ${danger}`)).toContain(code);
    }
  });
});

test('two harmless sentences are no danger because there are two', () => {
  for (const [k, first] of asked.entries())
    expect(dangersIn(`${first} ${asked[(k + 1) % asked.length]}`)).toEqual([]);
});
