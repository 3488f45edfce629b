import { expect, test } from 'vitest';
import { contextFeatures } from '../../../src/language/decide/context-features.ts';
import { Decided } from '../../../src/language/decide/decided.ts';
import { FeatureList } from '../../../src/language/decide/feature-list.ts';
import { frameOf } from '../../../src/language/decide/frame.ts';
import { score, unitsFor } from '../../../src/language/decide/model.ts';
import { ownerFeatures } from '../../../src/language/decide/owner-features.ts';
import { turnsOf } from '../../../src/language/decide/search.ts';
import { State } from '../../../src/language/decide/state.ts';
import { Weigher } from '../../../src/language/decide/weigh.ts';
import { shippedModel } from '../../../src/language/decide/weights.ts';
import { Candidates, candidatesOf, offersOf, propose } from '../../../src/language/propose/candidates.ts';
import * as slot from '../../../src/language/propose/slots.ts';
import { recognise } from '../../../src/language/recognise/recognise.ts';

const texts = [
  'fridge 1.2A, 2 lights 5W each for 4 hours a night, 100Ah agm, 3 days?',
  'sam says the 120Ah lithium is 2 days, ness says 4 with the 60 W fridge',
  'two 200 W panels and a 40A dcdc, 12 V, 5 m of 6 mm2 to the inverter 1000 W',
];

/** What a candidate weighs when every feature that training sees is summed afresh. */
function plainWeights(text: string, state: State, at: number): number[] {
  const model = shippedModel();
  const frame = frameOf(recognise(text).mentions);
  const features = new FeatureList();
  contextFeatures(frame, state, at, features);
  const sum = new Int32Array(model.slots.bias.length);
  model.slots.features.add(features, sum);
  const units = new Float64Array(sum.length);
  unitsFor(model.slots, sum, units);
  const raw = candidatesOf(state, at).map(c => {
    const own: number[] = [];
    if (c.slot !== slot.none) ownerFeatures(frame, new Decided(frame, state, at), at, c, own);
    const owner = own.reduce((total, feature) => total + model.owners.weight(feature), 0);
    return score(model.slots, units, c.slot) + model.owners.scale * owner;
  });
  const norm = Math.log(raw.reduce((total, w) => total + Math.exp(w), 0));
  return raw.map(w => w - norm);
}

test.each(texts)('what is kept from state to state weighs as if summed afresh: %s', text => {
  const { mentions } = recognise(text);
  const weigher = new Weigher(shippedModel(), frameOf(mentions));
  const candidates = new Candidates();
  let states = [State.empty(mentions)];
  let compared = 0;
  for (const at of turnsOf(mentions)) {
    const next: State[] = [];
    for (const state of states) {
      propose(state, offersOf(mentions, at), candidates);
      weigher.weigh(state, at, candidates);
      plainWeights(text, state, at).forEach((weight, k) => {
        expect(weigher.weights[k]).toBeCloseTo(weight, 9);
        compared++;
      });
      // The first and two others, so that states differ in what they have decided.
      for (const k of [0, 1, candidates.count - 1])
        next.push(
          state.with(
            at,
            candidates.slots[k] ?? 0,
            candidates.owners[k] ?? -1,
            candidates.variants[k] ?? -1,
            candidates.values[k] ?? Number.NaN,
            0,
          ),
        );
    }
    states = next.filter((_, i) => i % Math.ceil(next.length / 8) === 0);
  }
  expect(compared).toBeGreaterThan(100);
});
