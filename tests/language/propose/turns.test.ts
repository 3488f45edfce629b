import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { assemble } from '#language/decide/assemble.ts';
import { State } from '#language/decide/state.ts';
import { candidatesOf } from '#language/propose/candidates.ts';
import { slots } from '#language/propose/slots.ts';
import { recognise } from '#language/recognise/recognise.ts';

/** Values that some mention of a turn may have in a slot; the thing "before" is what the talk is about. */
function values(text: string, name: string, before = 'thing' as 'thing' | 'whole'): number[] {
  const { mentions } = recognise(text);
  return mentions.flatMap((_, at) =>
    candidatesOf(State.empty(mentions, before), at)
      .filter(c => present(slots[c.slot]).name === name)
      .map(c => Math.round(c.value * 1000) / 1000),
  );
}

/** What a turn states where one mention is decided to be the last of its candidates for a slot. */
function stated(text: string, name: string, spokenOf: string) {
  const { mentions } = recognise(text);
  const empty = State.empty(mentions, 'thing');
  for (const [at] of mentions.entries())
    for (const c of candidatesOf(empty, at).reverse())
      if (present(slots[c.slot]).name === name)
        return assemble(empty.with(at, c.slot, c.owner, c.variant, c.value, 0), undefined, spokenOf);
  throw new Error(`“${text}” has no candidate for ${name}`);
}

describe('how many of the thing last spoken of', () => {
  test.for<[text: string, spokenOf: string, count: number]>([
    ['and if we take two', 'ebike', 2],
    ['there are 3 of us', 'electric blanket', 3],
    ['we have four of them', 'lantern', 4],
  ])('%s', ([text, spokenOf, count]) => {
    expect(stated(text, 'count', spokenOf)).toEqual({ loads: [{ name: spokenOf, count }] });
  });

  test('nothing spoken of, nothing counted', () => {
    expect(values('and if we take two', 'count', 'whole')).toEqual([]);
    expect(values('and if we take 2.5', 'count')).toEqual([]);
  });
});

describe('figures without their unit, and units that say more', () => {
  test.for<[text: string, slot: string, some: number[]]>([
    ['what about the 1000 one', 'battery.energyWh', [1000]],
    ['left alone for a month', 'durationH', [720]],
    ['three months in the shed', 'durationH', [2160]],
    ['the agm is 18 months old', 'battery.ageYears', [1.5]],
    ['for an hr', 'durationH', [1]],
    ['we drive 40 minutes out and 40 back', 'drivingHoursPerDay', [0.667, 1.333]],
    ['half an hour at dawn and half an hour at dusk', 'durationH', [0.5, 1]],
    ['5 feeds a day, the warmer is 80 W, say twelve minutes a go', 'durationH', [1]],
    ['on at 7 and off at 1', 'durationH', [6]],
    ['9 in the evening, we leave at 7', 'durationH', [10]],
    ["till 8 in the morning, it's 11 now", 'durationH', [9]],
    ['off the car battery since 2pm, the 70 Ah one. music till midnight', 'durationH', [10]],
    ['spending a week in Utah', 'durationH', [168]],
    ['the bms stops at 30', 'battery.maxCurrentA', [30]],
    ['lanterns on at 7 and out', 'durationH', [7]],
  ])('%s: %s', ([text, slot, some]) => {
    expect(values(text, slot)).toEqual(expect.arrayContaining(some));
  });

  test('a small number is no power station, another thing’s hours add to none', () => {
    expect(values('what about the 120 one', 'battery.energyWh')).toEqual([]);
    expect(values('the fuse is 30', 'battery.maxCurrentA')).toEqual([]);
    expect(values('fan 2 hours and lamp 3 hours', 'durationH')).toEqual([2, 3]);
  });

  test('“w/” is with, “min 20%” at least', () => {
    const units = (text: string) =>
      recognise(text).mentions.flatMap(m => (m.kind === 'amount' ? [m.unit] : []));
    expect(units('net -15 w/ fridge on')).toEqual([]);
    expect(units('net -15 w with the fridge on')).toEqual(['W']);
    expect(units('lithium 100 min 20%')).toEqual(['%']);
    expect(units('100 min at 20%')).toEqual(['min', '%']);
  });
});

describe('what is ruled out, and what is there all the same', () => {
  test.for<[text: string, slot: string]>([
    ['told not to get the generator wet', 'charger:generator'],
    ['not using the dc dc yet', 'charger:dcdc'],
    ['never mind the battery', 'without'],
    ['solar is out', 'without'],
    ['we left the solar at home', 'without'],
    ['three nights off charge', 'without'],
    ['mains not available', 'without'],
  ])('%s: %s', ([text, slot]) => {
    expect(values(text, slot)).not.toEqual([]);
  });
});

describe('where a battery sits may tell what it is for', () => {
  const roles = (text: string) =>
    recognise(text)
      .mentions.filter(m => m.kind === 'role')
      .map(m => m.cls);
  test.for<[text: string, roles: string[]]>([
    ['isolator for the rear AGM', ['role?:house']],
    ['lithium in the back', ['role?:house']],
    ["the car's own 60 Ah", ['role?:starter']],
    ['old car, battery of 44 Ah', ['role?:starter']],
    ['or just use the car one', ['role:starter']],
    ['bring back 150 Ah', []],
    ['kids in the back', []],
    ['we drive the car all day', []],
  ])('%s', ([text, want]) => {
    expect(roles(text)).toEqual(want);
  });
});

test('a level says how far down as well', () => {
  expect(values('draining it halfway each time', 'depthOfDischargePercent:floor')).toEqual([50]);
  expect(values('right down to empty', 'depthOfDischargePercent:floor')).toEqual([100]);
});

test('a town called like a thing is proposed as a town where a word leads to it', () => {
  expect(values('camped near Mobile', 'place')).toHaveLength(1);
  expect(values('charging my mobile', 'place')).toEqual([]);
});

test('“both half full” is of both batteries', () => {
  const { mentions } = recognise('40 Ah and 120 Ah, both half full');
  const at = (text: string) => mentions.findIndex(m => m.text === text);
  const ofCapacity = slots.findIndex(s => s.name === 'battery.capacityAh');
  const state = [at('40'), at('120')].reduce(
    (s, i) => s.with(i, ofCapacity, -2, -1, present(mentions[i]).value, 0),
    State.empty(mentions),
  );
  const half = candidatesOf(state, at('half')).findLast(
    c => present(slots[c.slot]).name === 'battery.stateOfChargePercent' && c.value === 50,
  );
  const { slot, owner, variant, value } = present(half);
  expect(assemble(state.with(at('half'), slot, owner, variant, value, 0)).batteries).toEqual([
    { capacityAh: 40, stateOfChargePercent: 50 },
    { capacityAh: 120, stateOfChargePercent: 50 },
  ]);
});
