import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { contextFeatures } from '#language/decide/context-features.ts';
import { decide } from '#language/decide/decide.ts';
import { Decided } from '#language/decide/decided.ts';
import { type Frame, frameOf } from '#language/decide/frame.ts';
import type { Model } from '#language/decide/model.ts';
import { ownerFeatures } from '#language/decide/owner-features.ts';
import { search, turnsOf } from '#language/decide/search.ts';
import { State } from '#language/decide/state.ts';
import { Table } from '#language/decide/table.ts';
import { Weigher } from '#language/decide/weigh.ts';
import { Candidates, candidatesOf, offersOf, propose } from '#language/propose/candidates.ts';
import { slots } from '#language/propose/slots.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { slotNumber, smallModel } from './small-model.ts';

const waysOf = (model: Model, f: Frame, width: number, fixed?: ReadonlySet<number>): State[] =>
  search(new Weigher(model, f), f, width, fixed);
const frame = (text: string) => frameOf(recognise(text).mentions);
const roles = (state: State): string[] =>
  state.mentions.flatMap((m, i) =>
    present(state.slots[i]) > 0 ? [`${m.text}: ${present(slots[present(state.slots[i])]).name}`] : [],
  );

describe('the search', () => {
  test('takes the likeliest role of each mention', () => {
    const model = smallModel({ load: 3, 'load.currentA': 3, 'battery.capacityAh': 3 });
    const [best] = waysOf(model, frame('fridge 2 A, 100 Ah'), 6);
    expect(roles(present(best))).toEqual(['fridge: load', '2: load.currentA', '100: battery.capacityAh']);
  });

  test('a weight of another slot turns it', () => {
    const model = smallModel({ load: 3, 'load.currentA': 1, fuseA: 3 });
    const [best] = waysOf(model, frame('fridge 2 A'), 6);
    expect(roles(present(best))).toEqual(['fridge: load', '2: fuseA']);
  });

  test('keeps so many ways and no more, the likeliest first', () => {
    const model = smallModel({ load: 1 });
    const some = waysOf(model, frame('fridge 2 A, 100 Ah, 3 days'), 4);
    expect(some).toHaveLength(4);
    expect(some.map(s => s.score)).toEqual(some.map(s => s.score).sort((a, b) => b - a));
  });

  test('a wider beam never finds a worse best', () => {
    const model = smallModel({ load: 1, 'load.currentA': 0.5, durationH: 0.3 });
    const f = frame('fridge 2 A and lamp 1 A, 3 days');
    const best = (width: number): number => present(waysOf(model, f, width)[0]).score;
    expect(best(32)).toBeGreaterThanOrEqual(best(1) - 1e-9);
  });

  test('leaves alone what is told for already', () => {
    const f = frame('fridge 2 A');
    const [best] = waysOf(smallModel({ load: 3 }), f, 6, new Set([0]));
    expect(present(best).slots[0]).toBe(-1);
  });

  test('a feature of the surroundings weighs with the slot', () => {
    const f = frame('fuse 20 A');
    const at = f.mentions.findIndex(m => m.cls === 'A');
    const features: number[] = [];
    contextFeatures(f, State.empty(f.mentions), at, features);
    const model = smallModel({ 'load.currentA': 1 });
    const table = Table.of(new Map([[present(features[0]), 0]]), Float32Array.from([2, 0]), 2);
    const learned = { ...model, slots: { ...model.slots, features: table, out: model.slots.out.slice() } };
    learned.slots.out[slotNumber('fuseA') * 2] = 4;
    expect(roles(present(waysOf(model, f, 4)[0]))).toContain('20: load.currentA');
    expect(roles(present(waysOf(learned, f, 4)[0]))).toContain('20: fuseA');
  });

  test('a feature of an owner turns the choice between two', () => {
    const f = frame('fridge and lamp 2 A');
    const [fridge, lamp] = ['fridge', 'lamp'].map(text => f.mentions.findIndex(m => m.text === text));
    const state = [present(fridge), present(lamp)].reduce(
      (s, i) => s.with(i, slotNumber('load'), -1, -1, Number.NaN, 0),
      State.empty(f.mentions),
    );
    const at = f.mentions.findIndex(m => m.cls === 'A');
    const candidates = candidatesOf(state, at);
    const mine = present(candidates.find(c => c.slot === slotNumber('load.currentA') && c.owner === fridge));
    const others = present(candidates.find(c => c.slot === slotNumber('load.currentA') && c.owner === lamp));
    const of = (c: typeof mine): number[] => {
      const out: number[] = [];
      ownerFeatures(f, new Decided(f, state, at), at, c, out);
      return out;
    };
    const only = present(of(mine).find(feature => !of(others).includes(feature)));
    const model = { ...smallModel({}), owners: Table.of(new Map([[only, 0]]), Float32Array.from([5]), 1) };
    const weigher = new Weigher(model, f);
    const list = new Candidates();
    propose(state, offersOf(f.mentions, at), list);
    weigher.weigh(state, at, list);
    const weights = weigher.weights.subarray(0, list.count);
    expect(weights).toHaveLength(candidates.length);
    expect(
      present(weights[candidates.indexOf(mine)]) - present(weights[candidates.indexOf(others)]),
    ).toBeCloseTo(5, 4);
    expect([...weights].reduce((sum, w) => sum + Math.exp(w), 0)).toBeCloseTo(1, 6);
  });

  test('every mention with a choice has one turn', () => {
    const { mentions } = recognise('fridge 2 A, 100 Ah AGM, how long?');
    const turns = turnsOf(mentions);
    expect(new Set(turns).size).toBe(turns.length);
    expect(turns.map(i => present(mentions[i]).cls).sort()).toEqual(['A', 'Ah', 'chemistry:agm', 'thing']);
  });
});

describe('the decision', () => {
  const text = 'fridge 2 A, 100 Ah';
  const { mentions } = recognise(text);
  const model = smallModel(
    { load: 3, 'load.currentA': 3, 'battery.capacityAh': 3 },
    { 'run-time': 2, 'battery-size': 1 },
  );

  test('weighs questions with facts; the shares add to one', () => {
    const { options, certainty } = decide(model, mentions, {}, text);
    expect(options[0]).toMatchObject({
      intent: 'run-time',
      stated: { loads: [{ name: 'fridge', currentA: 2 }], batteries: [{ capacityAh: 100 }] },
    });
    expect(options.reduce((sum, o) => sum + o.probability, 0)).toBeCloseTo(1, 6);
    expect(certainty).toBeGreaterThan(0);
    expect(certainty).toBeLessThan(1);
    const keys = options.map(o => o.intent + JSON.stringify(o.stated));
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('the same message is decided alike every time', () => {
    const once = () => decide(model, recognise(text).mentions, {}, text).options.map(o => o.probability);
    expect(once()).toEqual(once());
  });
});
