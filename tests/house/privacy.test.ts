import { expect, test } from 'vitest';
import { frameSchema, memorySchema } from '#conversation/memory.ts';
import { read } from './source.ts';

const page = read('docs/privacy.md').replace(/\s+/g, ' ');

/** What docs/privacy.md says of each part of a chat's memory. A part that is added needs words there and a row here. */
const ofMemory: Readonly<Record<string, string>> = {
  version: '',
  rigs: '**Rigs**',
  shared: 'who shares whose rig**',
  learned: '**What readings have taught of a rig**',
  passing: '**What was said in passing** (days, driving, sky)',
  passingAt: 'with when',
  passingFrom: 'by whom',
  frames: '**The last six questions**',
  talk: '**What the last lines look like**',
  choice: '**two ways to read a message**',
  forgetting: '**A wish to forget, and the step back**',
  undo: 'a rig as it was before',
  claims: '**Claims in an argument**',
  lessons: '**Lessons**',
  people: '**Marks of people**',
  settings: '**Settings** of the chat',
};
const ofSettings: Readonly<Record<string, string>> = {
  mainsV: 'mains voltage',
  pictures: 'whether pictures come by themselves',
  isWordlessTold: "whether you were told that voice notes can't be read",
  isDark: 'on dark ground',
  units: 'feet, °F or wire gauge',
};
const ofQuestion: Readonly<Record<string, string>> = {
  intent: 'its kind and numbers',
  facts: 'its kind and numbers',
  claims: '**Claims in an argument**',
  owner: 'whose rig it went by',
  lent: 'what of it was lent by whom',
  from: "the asker's first name",
  at: 'when',
  readAt: 'when a current it went by was read',
  onto: 'which question it turned',
  mainsV: 'its kind and numbers',
  conversion: 'its kind and numbers',
  recalled: 'which of its facts came from memory',
  cues: 'signs its words gave',
  isCheck: 'signs its words gave',
  subject: 'what it was about beyond numbers',
  units: 'the units it was told in',
  hazards: 'codes of dangers that it spoke of',
  asked: 'which facts were asked back for',
  untold: 'which of them the asker said not to know',
};

test.for([
  ['memory', memorySchema.shape, ofMemory],
  ['settings', memorySchema.shape.settings.shape, ofSettings],
  ['a question', frameSchema.shape, ofQuestion],
] as const)('docs/privacy.md names all that is kept: %s', ([, shape, words]) => {
  expect(Object.keys(words).sort()).toEqual(Object.keys(shape).sort());
  expect(Object.entries(words).filter(([, says]) => !page.includes(says))).toEqual([]);
});
