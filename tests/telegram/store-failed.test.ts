import { expect, test } from 'vitest';
import { StoreFailed } from '#conversation/memory-store.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { stage } from './fake/bot.ts';
import { message, update } from './fake/people.ts';

const question = () => update({ message: message('/power fridge') as never });

test('a store that has no room for a memory: nothing is said, the update comes again, and is answered then', async () => {
  const store = new VolatileStore();
  const save = store.save.bind(store);
  let isFull = true;
  store.save = async (...args) => {
    if (isFull) throw new StoreFailed("the memory can't grow: the disk is full");
    return save(...args);
  };
  const s = stage({ store });
  const asked = question();
  await expect(s.give(asked)).rejects.toMatchObject({ error: { name: 'Unkept' } });
  expect(s.answers()).toEqual([]);
  isFull = false;
  await s.give(asked);
  expect(s.answers().map(({ text }) => text?.split('\n')[0])).toEqual(['Answer to Sam: fridge']);
});

test('any other fault of the store is told with an id, and the update is done', async () => {
  const store = new VolatileStore();
  store.save = () => Promise.reject(new Error('a memory was not saved: rigs is wrong'));
  const s = stage({ store });
  await s.give(question());
  expect(s.answers().at(-1)?.text).toMatch(/something went wrong/);
});
