import type { Setting } from '#intents/intent.ts';
import type { Said } from '#language/said.ts';

/** A message that said nothing, for tests that hand over facts by themselves. */
export const nothingSaid: Said = {
  facts: {},
  cues: new Set(),
  claims: [],
  removed: [],
  corrections: [],
  owners: [],
  bareLoads: [],
  loose: [],
  numbers: [],
  issues: [],
  words: 0,
  known: 0,
  trace: [],
};

/** The surroundings of a question asked by Robin on a summer morning, changed where a test says so. */
export const settingWith = (changes: Partial<Setting> = {}, said: Partial<Said> = {}): Setting => ({
  from: 'robin',
  at: new Date('2026-01-15T09:00:00Z'),
  mainsV: 230,
  recalled: new Set(),
  claims: [],
  rigs: {},
  said: { ...nothingSaid, ...said },
  kind: 'group',
  isAdmin: true,
  ownKey: 'robin',
  examples: () => [],
  ...changes,
});
