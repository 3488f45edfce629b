import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { emptyMemory } from '#conversation/memory.ts';
import type { MemoryStore } from '#conversation/memory-store.ts';
import { ClaimLost, StaleRevision } from '#conversation/memory-store.ts';
import type { KeptStore, StoreOptions } from '#memory/kept.ts';
import { billabong, named } from './examples.ts';

/** A fresh, empty place for one store of a kind. */
export interface World {
  open(options?: StoreOptions): Promise<KeptStore>;
  end(): Promise<void>;
}

const group = '-1001234567890';
const day = 86_400_000;
const noon = 20_000 * day + day / 2;

/** What every store must do, told the way a transport meets it. */
export const conformance = (kind: string, makeWorld: () => Promise<World>): void => {
  describe(kind, () => {
    let world: World;
    let store: MemoryStore;
    let clock: number;
    beforeEach(async () => {
      clock = noon;
      world = await makeWorld();
      store = await world.open({ now: () => clock, releaseAfterMs: 60_000 });
    });
    afterEach(() => world.end());

    const keep = async (chat: string, owner: string): Promise<number> =>
      store.save(chat, named(owner), (await store.load(chat)).revision);
    const owners = async (chat: string): Promise<string[]> =>
      Object.keys((await store.load(chat)).memory.rigs).sort();

    describe('load and save', () => {
      test('a new chat is empty, at revision 0', async () => {
        expect(await store.load(group)).toEqual({ memory: emptyMemory(), revision: 0 });
      });

      test('what was saved comes back, once and again', async () => {
        const revision = await store.save(group, billabong, 0);
        expect(await store.load(group)).toEqual({ memory: billabong, revision });
        const next = await store.save(group, named('sam'), revision);
        expect(next).not.toBe(revision);
        expect(await store.load(group)).toEqual({ memory: named('sam'), revision: next });
      });

      test('chats do not see each other', async () => {
        await keep('1', 'sam');
        await keep('2', 'alex');
        expect([await owners('1'), await owners('2'), await owners('3')]).toEqual([['sam'], ['alex'], []]);
      });

      test('a loaded memory is the caller’s own: changing it changes nothing stored', async () => {
        await keep(group, 'sam');
        (await store.load(group)).memory.rigs.alex = {};
        expect(await owners(group)).toEqual(['sam']);
      });

      test.each([
        ['an older revision', async () => (await keep(group, 'sam')) - 1],
        ['no revision where there is one', async () => (await keep(group, 'sam')) * 0],
        ['a revision where there is none', async () => 5],
      ])('refuses %s and keeps what is there', async (_, revision) => {
        const stale = await revision();
        const before = await store.load(group);
        await expect(store.save(group, named('alex'), stale)).rejects.toBeInstanceOf(StaleRevision);
        expect(await store.load(group)).toEqual(before);
      });

      test('of ten saves on one revision, one is kept', async () => {
        const all = await Promise.allSettled(
          Array.from({ length: 10 }, (_, i) => store.save(group, named(`p${i}`), 0)),
        );
        const kept = all.flatMap((one, i) => (one.status === 'fulfilled' ? [`p${i}`] : []));
        expect(kept).toHaveLength(1);
        expect(await owners(group)).toEqual(kept);
      });

      test('a memory that breaks its schema is refused, without its names in the error', async () => {
        const wrong = { ...named('wilhelmina'), rigs: { wilhelmina: { dailyUseAh: -1 } } };
        const error = await store.save(group, wrong, 0).catch(reason => reason);
        expect(error.message).toMatch(/not saved: rigs is wrong/);
        expect(error.message).not.toMatch(/wilhelmina/);
        expect((await store.load(group)).revision).toBe(0);
      });

      test.each(['', 'ü – Großvater 🚐', "o'neil; DROP TABLE memories", '__proto__x'])(
        'an owner called %j',
        async owner => {
          await keep('console', owner);
          expect(await owners('console')).toEqual([owner]);
        },
      );
    });

    describe('claims', () => {
      test('an update goes to one caller', async () => {
        const all = await Promise.all(Array.from({ length: 8 }, () => store.claim(7, noon)));
        expect(all.map(one => one.state).sort()).toEqual([...Array(7).fill('busy'), 'new']);
      });

      test('once answered, it stays answered, and tells by which message', async () => {
        await store.claim(7, noon);
        await store.finish(7, { chat: group, question: '41', answer: '42' });
        expect(await store.claim(7, noon + day)).toEqual({ state: 'done', answer: '42' });
      });

      test('a save without a reply closes it with the memory', async () => {
        await store.claim(7, noon);
        await store.save(group, named('sam'), 0, { update: 7 });
        expect(await store.claim(7, noon)).toEqual({ state: 'done', answer: undefined });
      });

      test('a stale save leaves the claim open, a save of a lost claim leaves the memory', async () => {
        await keep(group, 'sam');
        await store.claim(7, noon);
        await expect(store.save(group, named('alex'), 0, { update: 7 })).rejects.toBeInstanceOf(
          StaleRevision,
        );
        expect((await store.claim(7, noon)).state).toBe('busy');
        await store.finish(7);
        const { revision } = await store.load(group);
        await expect(store.save(group, named('alex'), revision, { update: 7 })).rejects.toBeInstanceOf(
          ClaimLost,
        );
        expect(await owners(group)).toEqual(['sam']);
      });

      test('given back, it comes again, with the reply where the memory was saved', async () => {
        await store.claim(7, noon);
        await store.release(7);
        expect(await store.claim(7, noon)).toEqual({ state: 'again', reply: undefined });
        await store.save(group, named('sam'), 0, { update: 7, reply: 'about 2 days' });
        expect((await store.claim(7, noon)).state).toBe('busy');
        await store.release(7);
        expect(await store.claim(7, noon)).toEqual({ state: 'again', reply: 'about 2 days' });
        await store.finish(7);
        expect((await store.claim(7, noon)).state).toBe('done');
      });

      test('given back before anything was sent, it says so, once', async () => {
        await store.claim(7, noon);
        await store.save(group, billabong, 0, { update: 7, reply: 'about 2 days' });
        await store.release(7, true);
        expect(await store.claim(7, noon)).toEqual({ state: 'again', reply: 'about 2 days', isUnsent: true });
        await store.release(7);
        expect(await store.claim(7, noon)).toEqual({ state: 'again', reply: 'about 2 days' });
      });

      test('giving back an answered one changes nothing', async () => {
        await store.claim(7, noon);
        await store.finish(7);
        await store.release(7);
        expect((await store.claim(7, noon)).state).toBe('done');
      });

      test('kept too long, it is given once more, to one', async () => {
        await store.claim(7, noon);
        expect((await store.claim(7, noon + 59_999)).state).toBe('busy');
        const all = await Promise.all([1, 2, 3].map(() => store.claim(7, noon + 60_000)));
        expect(all.map(one => one.state).sort()).toEqual(['again', 'busy', 'busy']);
      });

      test('an edited question finds its answer, the latest, in its own chat', async () => {
        for (const [update, answer] of [
          [7, '42'],
          [8, '43'],
        ] as const) {
          await store.claim(update, noon + update);
          await store.finish(update, { chat: group, question: '41', answer });
        }
        expect(await store.answerTo(group, '41')).toBe('43');
        expect(await store.answerTo(group, '40')).toBeUndefined();
        expect(await store.answerTo('2', '41')).toBeUndefined();
        expect(await store.answersIn(group)).toEqual(new Set(['42', '43']));
        expect(await store.answersIn('2')).toEqual(new Set());
      });
    });

    test('replies that did not go out are due, oldest first, until they did', async () => {
      expect(await store.due()).toEqual([]);
      for (const update of [71, 72, 73]) await store.claim(update, clock + update);
      await store.save(group, emptyMemory(), 0, { update: 72, reply: 'b' });
      const { revision } = await store.load(group);
      await store.save(group, emptyMemory(), revision, { update: 71, reply: 'a' });
      expect(await store.due()).toEqual([71, 72]);
      await store.release(71);
      expect(await store.due()).toEqual([71, 72]);
      await store.finish(71);
      expect(await store.due()).toEqual([72]);
    });

    describe('tallies', () => {
      const one = { what: '-5 7', most: 2 };
      const all = { what: '-5', most: 3 };

      test('count up to one beyond what is allowed; going on is out for a whole minute more', async () => {
        const counts: number[] = [];
        for (const at of [0, 1000, 50_000, 51_000, 109_999, 110_000])
          counts.push((await store.tally(noon + at, one)).count);
        expect(counts).toEqual([1, 2, 3, 4, 5, 1]);
      });

      test('what the first has no room for does not count for the second', async () => {
        const seen: unknown[] = [];
        for (let i = 0; i < 3; i++) seen.push(await store.tally(noon, one, all));
        seen.push(await store.tally(noon, { what: '-5 8', most: 2 }, all));
        expect(seen).toEqual([
          { count: 1, within: 1 },
          { count: 2, within: 2 },
          { count: 3 },
          { count: 1, within: 3 },
        ]);
        expect(await store.tally(noon, { what: '-6 7', most: 2 })).toEqual({ count: 1 });
      });

      test('a clock that was wrong stops nobody for long', async () => {
        for (let i = 0; i < 3; i++) await store.tally(noon + 400 * day, one);
        expect(await store.tally(noon, one)).toEqual({ count: 1 });
      });

      test('at once, each gets another number', async () => {
        const counts = await Promise.all(Array.from({ length: 20 }, () => store.tally(noon, one, all)));
        expect(counts.map(({ count }) => count).sort((a, b) => a - b)).toEqual(
          Array.from({ length: 20 }, (_, i) => i + 1),
        );
        expect(counts.filter(({ within }) => within !== undefined)).toHaveLength(2);
      });
    });

    describe('order', () => {
      test('one chat’s work runs in a row, in the order it came', async () => {
        const log: string[] = [];
        const work = (name: string) => async () => {
          log.push(`${name} starts`);
          await store.load(group);
          log.push(`${name} ends`);
          return name;
        };
        const all = ['a', 'b', 'c'].map(name => store.withLock(group, work(name)));
        expect(await Promise.all(all)).toEqual(['a', 'b', 'c']);
        expect(log).toEqual(['a starts', 'a ends', 'b starts', 'b ends', 'c starts', 'c ends']);
      });

      test('another chat does not wait', async () => {
        let free = (): void => undefined;
        const gate = new Promise<void>(resolve => {
          free = resolve;
        });
        const first = store.withLock('1', () => gate);
        expect(await store.withLock('2', async () => 'done')).toBe('done');
        free();
        await first;
      });

      test('a failure reaches its caller and frees the chat', async () => {
        const failing = store.withLock(group, () => Promise.reject(new Error('flat battery')));
        await expect(failing).rejects.toThrow('flat battery');
        expect(await store.withLock(group, async () => 1)).toBe(1);
      });

      test('100 additions under the lock lose none', async () => {
        await Promise.all(
          Array.from({ length: 100 }, (_, i) =>
            store.withLock(group, async () => {
              const { memory, revision } = await store.load(group);
              memory.rigs[`p${i}`] = {};
              await store.save(group, memory, revision);
            }),
          ),
        );
        expect(await owners(group)).toHaveLength(100);
      });

      test('a group’s old and new id are one chat', async () => {
        await store.move('-5', group);
        const log: string[] = [];
        const work = (name: string) => async () => {
          log.push(name);
          await store.load(group);
          log.push(name);
        };
        await Promise.all([store.withLock('-5', work('old')), store.withLock(group, work('new'))]);
        expect(log[0]).toBe(log[1]);
        expect(log[2]).toBe(log[3]);
      });
    });

    describe('a group becomes a supergroup', () => {
      test('its memory goes along, and the old id reads it ever after', async () => {
        await keep('-5', 'sam');
        await store.move('-5', group);
        await store.move('-5', group);
        expect(await owners(group)).toEqual(['sam']);
        await keep('-5', 'alex');
        expect(await owners(group)).toEqual(['alex']);
      });

      test('where people talked in the new one first, that wins and the old one fills the gaps', async () => {
        const old = { ...named('sam'), settings: { mainsV: 120 }, frames: billabong.frames };
        await store.save('-5', { ...old, rigs: { sam: { dailyUseAh: 1 }, '': { dailyUseAh: 2 } } }, 0);
        const revision = await store.save(group, { ...named('sam'), settings: { pictures: false } }, 0);
        await store.move('-5', group);
        const { memory } = await store.load(group);
        expect(memory).toEqual({
          ...named('sam'),
          rigs: { sam: { dailyUseAh: 30 }, '': { dailyUseAh: 2 } },
          settings: { mainsV: 120, pictures: false },
          frames: billabong.frames,
        });
        await expect(store.save(group, named('alex'), revision)).rejects.toBeInstanceOf(StaleRevision);
      });

      test('told twice at once, and backwards, it moves once', async () => {
        await keep('-5', 'sam');
        await Promise.all([store.move('-5', group), store.move('-5', group), store.move('-5', group)]);
        await store.move(group, '-5');
        expect([await owners('-5'), await owners(group)]).toEqual([['sam'], ['sam']]);
      });

      test('moved twice, the first id still leads to the last', async () => {
        await keep('-5', 'sam');
        await store.move('-5', '-6');
        await store.move('-6', group);
        expect([await owners('-5'), await owners('-6')]).toEqual([['sam'], ['sam']]);
      });

      test('message numbers start again: the old chat’s answers are not the new one’s', async () => {
        await store.claim(7, noon);
        await store.finish(7, { chat: '-5', question: '1', answer: '2' });
        await store.move('-5', group);
        expect(await store.answerTo(group, '1')).toBeUndefined();
      });
    });

    describe('forget and prune', () => {
      test('nothing of the chat is left: memory, answers, unsent replies, former ids', async () => {
        await keep('-5', 'sam');
        await store.claim(6, noon);
        await store.finish(6, { chat: '-5', question: '1', answer: '2' });
        await store.claim(7, noon);
        await store.save('-5', named('sam'), (await store.load('-5')).revision, {
          update: 7,
          reply: 'unsent',
        });
        await store.move('-5', group);
        await store.forget(group);
        expect(await store.load(group)).toEqual({ memory: emptyMemory(), revision: 0 });
        expect(await store.answerTo('-5', '1')).toBeUndefined();
        await store.release(7);
        expect(await store.claim(7, noon)).toEqual({ state: 'again', reply: undefined });
        await keep('-5', 'alex');
        expect(await owners(group)).toEqual([]);
      });

      test('it closes its update in the same step, and its reply is kept until sent', async () => {
        await keep(group, 'sam');
        await store.claim(7, noon);
        await store.forget(group, { update: 7, reply: 'forgotten' });
        await store.release(7);
        expect(await store.claim(7, noon)).toEqual({ state: 'again', reply: 'forgotten' });
        await store.finish(7);
        await expect(store.forget(group, { update: 7 })).rejects.toBeInstanceOf(ClaimLost);
      });

      test('a save that began before cannot bring it back', async () => {
        const revision = await keep(group, 'sam');
        await store.forget(group);
        await expect(store.save(group, named('sam'), revision)).rejects.toBeInstanceOf(StaleRevision);
        await keep(group, 'alex');
        await expect(store.save(group, named('sam'), revision)).rejects.toBeInstanceOf(StaleRevision);
      });

      test('other chats stay', async () => {
        await keep('1', 'sam');
        await store.forget(group);
        expect(await owners('1')).toEqual(['sam']);
      });

      test('old claims and long unused chats go, the rest stays', async () => {
        await keep(group, 'sam');
        await store.claim(7, noon - 1);
        await store.claim(8, noon);
        expect(await store.prune({ claims: noon })).toEqual({ claims: 1, chats: 0 });
        expect((await store.claim(7, noon)).state).toBe('new');
        expect((await store.claim(8, noon)).state).toBe('busy');
        expect(await store.prune({ claims: 0, chats: noon })).toEqual({ claims: 0, chats: 0 });
        expect(await store.prune({ claims: 0, chats: noon + day })).toEqual({ claims: 0, chats: 1 });
        expect((await store.load(group)).revision).toBe(0);
      });
    });

    describe('shut out of a chat', () => {
      const leave = () => store.leave(group, noon + 30 * day);
      /** How many chats go so many days later. */
      const left = async (days: number): Promise<number> => {
        clock = noon + days * day;
        return (await store.prune({ claims: 0 })).chats;
      };

      test('its memory goes when its day has come, and not a day before', async () => {
        await keep(group, 'sam');
        await keep('1', 'alex');
        await leave();
        expect(await left(29)).toBe(0);
        expect(await owners(group)).toEqual(['sam']);
        expect(await left(30)).toBe(1);
        expect((await store.load(group)).revision).toBe(0);
        expect(await owners('1')).toEqual(['alex']);
      });

      test('back in time, all of it is there still', async () => {
        const revision = await keep(group, 'sam');
        await leave();
        await store.rejoin(group);
        expect(await left(300)).toBe(0);
        expect((await store.load(group)).revision).toBe(revision);
      });

      test('a question asked there later takes the mark off', async () => {
        await keep(group, 'sam');
        await leave();
        await keep(group, 'alex');
        expect(await left(300)).toBe(0);
      });

      test('under its former id it is the same chat, and that id goes with it', async () => {
        await keep('-5', 'sam');
        await store.move('-5', group);
        await store.leave('-5', noon + day);
        expect(await left(1)).toBe(1);
        await keep('-5', 'alex');
        expect(await owners(group)).toEqual([]);
      });

      test('of a chat that nothing is kept of, nothing is noted', async () => {
        await leave();
        await keep(group, 'sam');
        expect(await left(300)).toBe(0);
      });
    });

    test('closing twice is fine', async () => {
      await store.close();
      await store.close();
    });
  });
};
