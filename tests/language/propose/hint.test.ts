import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { mayPlan } from '../../../src/language/propose/plans/hint.ts';
import { planRead } from '../../../src/language/propose/plans.ts';
import { recognise } from '../../../src/language/recognise/recognise.ts';
import { draws, shareOf } from '../../house/share.ts';
import { files, read } from '../../house/source.ts';

const wordings = files('tests/messages/*.jsonl').flatMap(path =>
  read(path)
    .split('\n')
    .filter(Boolean)
    .flatMap(line => (JSON.parse(line) as { wordings: string[] }).wordings),
);

test('no labelled message that tells a plan is passed over', () => {
  let plans = 0;
  let passed = 0;
  for (const text of shareOf(wordings, 24)) {
    const { mentions } = recognise(text);
    if (!mayPlan(mentions)) {
      passed++;
      expect(planRead(mentions), text).toBeUndefined();
    } else if (planRead(mentions)) plans++;
  }
  expect(plans).toBeGreaterThan(10);
  expect(passed).toBeGreaterThan(1000);
});

const pieces =
  'day|days|1|2|3|zero|none|nothing|sunny|cloudy|rain|sun|mix|drive|driving|3 h|hours|,|.|:|/|and|then|next|the|other two|rest|first|second|last|today|tomorrow|monday|sat|each|every|d2|same|again|also|parked|camp|no driving|not driving|0 days|a|ones|generator|between|for|fridge|☀|4 h sun|/ day 2|after that|tonight|\n'.split(
    '|',
  );

test('nor one made of the words of plans', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...pieces), { minLength: 2, maxLength: 14 }), words => {
      const { mentions } = recognise(words.join(' '));
      if (!mayPlan(mentions)) expect(planRead(mentions)).toBeUndefined();
    }),
    { numRuns: draws(1000, 10_000) },
  );
});
