import type { Mention } from '../recognise/mention.ts';
import type { Frame } from './frame.ts';
import type { State } from './state.ts';

/** What tells how sure a reading may be taken: each between about −5 and 5. */
export const certaintyNames = [
  'one',
  'lead',
  'share',
  'least sure role',
  'roles on average',
  'roles together',
  'question',
  'numbers',
  'many numbers',
  'unknown names',
  'unknown words',
  'length',
  'talk before',
  'numbers left over',
  'things',
  'danger',
  'members apart',
] as const;

const logit = (p: number): number => Math.max(-6, Math.min(6, Math.log((p + 1e-4) / (1 - p + 1e-4))));

/** What tells how sure a reading is, by itself: all but how far it is before the next. */
export function readingSigns(
  frame: Frame,
  state: State,
  question: number,
  danger: number,
  apart: number,
): number[] {
  let numbers = 0;
  let left = 0;
  let nouns = 0;
  let unknown = 0;
  let things = 0;
  frame.mentions.forEach((m: Mention, i) => {
    if (m.kind === 'number' || m.kind === 'amount') {
      numbers++;
      if (state.slots[i]! <= 0) left++;
    } else if (m.kind === 'noun') nouns++;
    else if (m.cls === '?') unknown++;
    if (state.slots[i] === 2) things++;
  });
  return [
    Math.max(-5, state.least),
    Math.max(-3, state.choices > 0 ? state.score / state.choices : 0) * 4,
    Math.max(-6, state.score),
    logit(question),
    Math.min(numbers, 8) / 2,
    numbers > 5 ? 1 : 0,
    Math.min(nouns, 5),
    Math.min(unknown, 5),
    Math.min(frame.mentions.length, 60) / 15,
    frame.context.length > 1 ? 1 : 0,
    Math.min(left, 5),
    Math.min(things, 6) / 2,
    danger,
    Math.min(apart, 5),
  ];
}

/** What tells how sure a reading is, with the shares of the best and of the next. */
export const certaintyFeatures = (
  first: number,
  second: number,
  ownSigns: readonly number[],
): readonly number[] => [1, Math.log((first + 1e-4) / (second + 1e-4)) / 2, logit(first), ...ownSigns];

/**
 * How likely a reading is right.
 * @param whole the weight of what it is like as a whole
 */
export const certainty = (weights: readonly number[], features: readonly number[], whole = 0): number => {
  let sum = whole;
  for (let i = 0; i < features.length; i++) sum += (weights[i] ?? 0) * features[i]!;
  return 1 / (1 + Math.exp(-sum));
};
