import type { RequestContext } from '#intents/intent.ts';
import type { ParsedMessage } from '#language/reading.ts';

/** A message that said nothing, for tests that hand over facts by themselves. */
export const nothingSaid: ParsedMessage = {
  intent: 'unclear',
  facts: {},
  claims: [],
  removed: [],
  owners: [],
  cues: new Set(),
  hazards: [],
  unread: [],
  probability: 1,
  margin: 20,
  words: 0,
  recognised: { text: '', tokens: [], words: [], mentions: [] },
  options: [],
  certainty: 1,
  dangers: new Map(),
  because: () => [],
};

/** The surroundings of a question asked by Robin on a summer morning, changed where a test says so. */
export const settingWith = (
  changes: Partial<RequestContext> = {},
  parsed: Partial<ParsedMessage> = {},
): RequestContext => ({
  from: 'robin',
  at: new Date('2026-01-15T09:00:00Z'),
  mainsV: 230,
  units: {},
  recalled: new Set(),
  claims: [],
  rigs: {},
  parsed: { ...nothingSaid, ...parsed },
  kind: 'group',
  isAdmin: true,
  ownKey: 'robin',
  examples: () => [],
  ...changes,
});
