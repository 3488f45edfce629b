import { expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { Damaged } from '#conversation/memory-store.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { stage } from './fake/bot.ts';
import { alone, group, kim, message, sam, update } from './fake/people.ts';

/** A store whose memories can't be read until they are forgotten. */
function damaged(): VolatileStore {
  const store = new VolatileStore();
  const [load, forget] = [store.load.bind(store), store.forget.bind(store)];
  let isWhole = false;
  store.load = async chat => {
    if (!isWhole) throw new Damaged('a sealed memory is damaged');
    return load(chat);
  };
  store.forget = async (chat, claimed) => {
    isWhole = true;
    return forget(chat, claimed);
  };
  return store;
}
const asking = (text: string, more: object) => update({ message: message(text, more as never) as never });

test('in private: one line says so, "forget everything" starts afresh, and then it answers', async () => {
  const s = stage({ store: damaged(), converse });
  const last = () => s.answers(alone.id).at(-1)?.text ?? '';
  await s.give(asking('fridge 1.2A, 100Ah, how long?', { chat: alone }));
  expect(last()).toMatch(/damaged.*“forget everything”/);
  await s.give(asking('forget everything', { chat: alone }));
  expect(last()).toMatch(/gone now/);
  await s.give(asking('fridge 1.2A, 100Ah, how long?', { chat: alone }));
  expect(last()).toMatch(/days/);
  expect(s.logged.filter(({ level }) => level === 'error')).toEqual([]);
});

test('in a group only an admin lets it go, and danger is answered all the same', async () => {
  const s = stage({ store: damaged(), converse });
  const last = () => s.answers(group.id).at(-1)?.text ?? '';
  s.world.admins.add(`${group.id} ${kim.id}`);
  await s.give(asking('/power forget everything', { from: sam }));
  expect(last()).toMatch(/An admin of the group/);
  await s.give(asking('/power my lithium battery is swelling and smoking', { from: sam }));
  expect(last()).not.toMatch(/damaged\. /);
  expect(last()).toMatch(/away|out|off/i);
  await s.give(asking('/power forget everything', { from: kim }));
  expect(last()).toMatch(/gone now/);
});
