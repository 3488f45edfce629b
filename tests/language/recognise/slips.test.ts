import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { mended } from '#language/recognise/lexicons.ts';
import { isSureSlip } from '#language/recognise/near.ts';
import { recognise } from '#language/recognise/recognise.ts';

test.for([
  ['pummp', 'pump'],
  ['darws', 'draws'],
  ['frdige', 'fridge'],
  ['alternatr', 'alternator'],
])('%s stands for %s', ([slip, word]) => {
  expect(mended(present(slip))).toBe(word);
});

test.for(['pump', 'alice', 'springs', 'inle', 'abc'])('%s is no slip', word => {
  expect(mended(word)).toBeUndefined();
});

test.for([
  ['pummp', 'pump', true],
  ['whta', 'what', true],
  ['bender', 'blender', false],
  ['fan', 'can', false],
] as const)('%s for %s: sure is %s', ([slip, word, isSure]) => {
  expect(isSureSlip(slip, word)).toBe(isSure);
});

test('a plain word with two letters swapped is no name', () => {
  expect(present(recognise('how long aobut').mentions.at(-1)).kind).toBe('word');
  expect(present(recognise('a ride in Darws').mentions.at(-1)).kind).not.toBe('word');
});
