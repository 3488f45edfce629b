import { describe, expect, test } from 'vitest';
import { contextIn } from '#conversation/kept/talk-read.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import { read } from '#language/reading.ts';
import { talkBefore } from '../../src/tools/train/talk.ts';
import { type Turn, talk } from './talk.ts';

/** The talk before a line as training builds it: by what the reader says of each line, and nothing else. */
const asTrained = (lines: readonly Turn[], from: string) =>
  talkBefore(
    {
      ...meaningless,
      from,
      before: lines.map(line => {
        const colon = line.indexOf(': ');
        return { from: line.slice(0, colon), text: line.slice(colon + 2) };
      }),
    },
    (text, context) => {
      const { intent, options } = read(text, context);
      return { intent, stated: options[0]?.stated ?? {} };
    },
  );
const meaningless = { id: 'x', wordings: [], intent: [], states: {}, file: '' } as const;

/** What is there of a context: nothing told is nothing kept, and the words of a line are kept in no order. */
const told = ({ heard, ...context }: TalkContext): object =>
  Object.fromEntries(
    Object.entries({
      ...context,
      heard: heard?.map(line => ({ ...line, words: new Set(line.words) })),
    }).filter(
      ([key, value]) =>
        key !== 'people' &&
        value !== undefined &&
        value !== false &&
        !(Array.isArray(value) && value.length === 0),
    ),
  );

describe('the running bot reads a line in the talk that the weights were fitted to', () => {
  test.each<[what: string, lines: readonly Turn[], from: string]>([
    ['a thing without its figure', ['una: how long will my fridge run on a 100Ah lithium?'], 'una'],
    ['a whole question of somebody else’s', ['una: fridge 1.2A on 100Ah agm, how long?'], 'pat'],
    ['two claims', ['una: 100Ah AGM, fridge 2A average. I say 3 days', 'pat: no, 2 days'], 'una'],
    ['an emergency', ['una: smoke is coming out of the battery box'], 'una'],
    ['chatter after a question', ['una: fridge 1.2A on 100Ah agm, how long?', 'pat: lovely sunset'], 'una'],
    ['two questions in one', ['una: what cable and what fuse for a 20A fridge circuit, 6 metres?'], 'una'],
    ['a turn', ['una: fridge 1.2A on 100Ah agm, how long?', 'una: and with 200Ah?'], 'pat'],
  ])('%s', (_what, lines, from) => {
    const { memory } = talk([...lines]);
    const at = new Date('2026-01-15T09:30:00Z');
    const context = contextIn(memory, { chat: 'c', from, text: '', at, kind: 'group' });
    expect(told(context)).toEqual(told(asTrained(lines, from)));
  });

  test('an example of how to say it is nobody’s gear', () => {
    const { memory, last } = talk(['una: how long will it last?']);
    expect(last.text).toMatch(/“.*fridge.*”/);
    expect(memory.talk?.asked?.length).toBeGreaterThan(0);
    expect(memory.talk?.things ?? []).toEqual([]);
  });
});

describe('silence goes by the reading where that is sure', () => {
  test.each<[lines: readonly Turn[], intent: string]>([
    [['una: my rig: 100Ah agm, 80W panel, fridge 2A average', 'una: whats my weak link'], 'rig-check'],
    [['una: my rig is 2 x 90Ah agm', "una: remind me what's in my rig"], 'rig'],
  ])('%j is answered', (lines, intent) => {
    const { last } = talk([...lines]);
    expect(last.intent).toBe(intent);
    expect(last.text).not.toBe('');
  });
});
