import { describe, expect, test } from 'vitest';
import { frameOf, type TalkContext } from '#language/decide/frame.ts';
import { turnsOf } from '#language/decide/search.ts';
import { slotsOf } from '#language/propose/roles.ts';
import { slots } from '#language/propose/slots.ts';
import { recognise } from '#language/recognise/recognise.ts';

/** The slots that the plain words of a message may fill in a talk. */
const told = (text: string, talk: TalkContext): (string | undefined)[] => {
  const { mentions, awaits } = frameOf(recognise(text).mentions, talk);
  return turnsOf(mentions, awaits)
    .map(at => mentions[at])
    .filter(m => m?.kind === 'word')
    .flatMap(m => (m ? slotsOf(m).map(s => slots[s]?.name) : []));
};

const asked: TalkContext = { lastIntent: 'charge-path', asked: ['?', 'alternator'] };

describe('words that answer a question', () => {
  test.for<[text: string, talk: TalkContext, slots: string[]]>([
    ['smart', asked, ['alternator:smart']],
    ["it's a smart one, 150 amp", asked, ['alternator:smart']],
    ['just the old kind', asked, ['alternator:fixed']],
    ['fixed output', { lastIntent: 'charge-path' }, ['alternator:fixed']],
    ['smart', {}, []],
    ['smart', { lastIntent: 'run-time' }, []],
    ['the old fridge', { lastIntent: 'charge-level' }, []],
  ])('%s', ([text, talk, want]) => {
    expect(told(text, talk)).toEqual(want);
  });
});
