import fc from 'fast-check';
import type { Message, User } from 'grammy/types';
import { beforeEach, describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { merge } from '#memory/merge.ts';
import { nameIn } from '#telegram/updates/people/names.ts';
import { type Stage, stage } from './fake/bot.ts';
import { alone, group, message, nowSec, sam } from './fake/people.ts';

const bot = 123456789;
const person = (id: number, first_name: string, last_name?: string): User => ({
  id,
  is_bot: false,
  first_name,
  ...(last_name !== undefined && { last_name }),
});
/** The names that people get who come one after the other. */
const namesOf = (...people: User[]): string[] => {
  let memory = emptyMemory();
  return people.map(user => {
    const named = nameIn(memory, user, bot);
    memory = named.memory;
    return named.name;
  });
};

describe('names in a group', () => {
  test.each([
    ['one Sam', [person(1, 'Sam')], ['Sam']],
    ['a second with a last name', [person(1, 'Sam'), person(2, 'Sam', 'brook')], ['Sam', 'Sam B']],
    ['a second without', [person(1, 'Sam'), person(2, 'sam')], ['Sam', 'sam 2']],
    [
      'three with one initial',
      [person(1, 'Sam', 'Ash'), person(2, 'Sam', 'Birch'), person(3, 'Sam', 'Beech')],
      ['Sam', 'Sam B', 'Sam 2'],
    ],
    [
      'each keeps theirs',
      [person(1, 'Sam'), person(2, 'Sam'), person(1, 'Sam'), person(2, 'Sam')],
      ['Sam', 'Sam 2', 'Sam', 'Sam 2'],
    ],
    ['nobody', [person(1_087_968_824, 'Group')], ['']],
  ])('%s', (_what, people, names) => {
    expect(namesOf(...people)).toEqual(names);
  });

  test('two people never share one, whatever they are called, and ids are not kept', () => {
    const anyone = fc.record({
      id: fc.integer({ min: 100_000, max: 100_020 }),
      first_name: fc.oneof(
        fc.constantFrom('Sam', 'SAM', 'Sam 2', 'İ', '__proto__'),
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 64 }),
      ),
      last_name: fc.constantFrom('B', 'b', '2', '🏕'),
    });
    fc.assert(
      fc.property(fc.array(anyone, { maxLength: 40 }), people => {
        let memory = emptyMemory();
        for (const one of people) ({ memory } = nameIn(memory, { ...one, is_bot: false }, bot));
        const names = Object.values(memory.people ?? {}).map(name => name.toLowerCase());
        expect(new Set(names).size).toBe(names.length);
        expect(names.every(name => name.length <= 60)).toBe(true);
        expect(JSON.stringify(Object.keys(memory.people ?? {}))).not.toMatch(/1000[012]\d/);
      }),
    );
  });

  test('who changes their first name takes their things along', () => {
    const { memory } = nameIn(emptyMemory(), person(1, 'Sam'), bot);
    const rigged = { ...memory, rigs: { sam: { dailyUseAh: 30 } } };
    const named = nameIn(rigged, person(1, 'Samira'), bot);
    expect(named.name).toBe('Samira');
    expect(named.memory.rigs).toEqual({ samira: { dailyUseAh: 30 } });
  });

  test('a shared rig stays shared, and a claim stays theirs, under a new name and in a group that moved', () => {
    const rig = { batteries: [{ capacityAh: 100 }] };
    const { memory: known } = nameIn(emptyMemory(), person(1, 'Sam'), bot);
    const told = {
      ...known,
      rigs: { sam: rig },
      shared: { sam: 'sam', dot: 'sam' },
      claims: [{ who: 'sam', value: 2, unit: 'days', at: 0 }],
    };
    const { memory } = nameIn(told, person(1, 'Robin'), bot);
    expect(memory.shared).toEqual({ robin: 'robin', dot: 'robin' });
    expect(memory.rigs).toEqual({ robin: rig });
    expect(memory.claims[0]?.who).toBe('robin');
    expect(merge(emptyMemory(), memory).shared).toEqual(memory.shared);
  });

  test('a full list lets go of one who keeps nothing', () => {
    let { memory } = nameIn(emptyMemory(), person(1, 'Kim'), bot);
    memory = { ...memory, rigs: { kim: {} } };
    for (let id = 2; id < 320; id++) ({ memory } = nameIn(memory, person(id, `P${id}`), bot));
    expect(Object.keys(memory.people ?? {})).toHaveLength(300);
    expect(Object.values(memory.people ?? {})).toContain('Kim');
  });

  test('of two memories that become one, each person has one name and each name one person', () => {
    const old = { ...emptyMemory(), people: { a: 'Sam', b: 'Kim', c: 'Lou' } };
    const now = { ...emptyMemory(), people: { b: 'Kim B', d: 'Sam' } };
    expect(merge(now, old).people).toEqual({ b: 'Kim B', c: 'Lou', d: 'Sam' });
  });
});

describe('two people of one name', () => {
  let s: Stage;
  beforeEach(() => {
    s = stage({ converse });
  });
  const otherSam = person(4711, 'Sam', 'Brook');
  const ask = async (text: string, from: User, more: Partial<Message> = {}): Promise<string> => {
    await s.give({ message: message(text, { from, ...more }) as never });
    return s.answers().at(-1)?.text ?? '';
  };

  test('have a rig each', async () => {
    await ask('/rig 100Ah AGM', sam);
    await ask('/rig 200Ah lithium', otherSam);
    expect(await ask('/power show my rig', sam)).toContain('100 Ah AGM');
    expect(await ask('/power show my rig', otherSam)).toContain('200 Ah lithium');
    const { memory } = await s.store.load(String(group.id));
    expect(Object.keys(memory.rigs).sort()).toEqual(['sam', 'sam b']);
    expect(JSON.stringify(memory)).not.toContain('4711');
  });
  test('one who is forgotten is not known by name either, and the other stays', async () => {
    await ask('/rig 100Ah AGM', sam);
    await ask('/rig 200Ah lithium', otherSam);
    await ask('/power forget me', otherSam);
    await ask('/power yes, forget', otherSam);
    const { memory } = await s.store.load(String(group.id));
    expect(Object.values(memory.people ?? {})).toEqual(['Sam']);
    expect(await ask('/power show my rig', sam)).toContain('100 Ah AGM');
  });
  test('keep theirs when the group moves', async () => {
    await ask('/rig 100Ah AGM', sam);
    await ask('/rig 200Ah lithium', otherSam);
    const next = { ...group, id: -1009 };
    await s.give({ message: message(undefined, { chat: next, migrate_from_chat_id: group.id }) as never });
    s.clock.now = nowSec * 1000;
    expect(await ask('/power show my rig', otherSam, { chat: next })).toContain('200 Ah lithium');
  });
  test('in private nobody is told apart, so nothing is noted', async () => {
    await ask('my rig is 100Ah AGM', sam, { chat: alone });
    expect((await s.store.load(String(alone.id))).memory.people).toBeUndefined();
  });
});
