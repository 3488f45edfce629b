import { describe, expect, test } from 'vitest';
import type { MemoryStore } from '#conversation/memory-store.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import type { Converse } from '#telegram/ops/deps.ts';
import { answer, stage } from './fake/bot.ts';
import { group, message, update } from './fake/people.ts';
import { World } from './fake/world.ts';

/** Counts how often it was asked, in the chat's memory: a change made twice would show. */
const counting: Converse = (memory, { text }) => {
  const count = (memory.settings.mainsV ?? 0) + 1;
  return { memory: { ...memory, settings: { mainsV: count } }, answer: answer(`${text}: ${count}`) };
};

type Step = 'claim' | 'load' | 'save' | 'finish';

/** A process that dies at a step, before or after it was carried out: from then on nothing it does has any effect. */
function dying(store: MemoryStore, step: Step, isAfter: boolean): MemoryStore {
  let isDead = false;
  const dead = () => Promise.reject(new Error('the process is dead'));
  return new Proxy(store, {
    get: (target, name) => {
      const method = Reflect.get(target, name);
      if (typeof method !== 'function') return method;
      return async (...args: unknown[]) => {
        if (isDead) return dead();
        if (name !== step) return method.apply(target, args);
        isDead = true;
        if (isAfter) await method.apply(target, args);
        return dead();
      };
    },
  });
}

describe('killed at any step, the next process answers once, and memory changes once', () => {
  test.each([
    ['before the claim', 'claim', false],
    ['after the claim', 'claim', true],
    ['before memory is read', 'load', false],
    ['before memory is saved', 'save', false],
    ['after memory is saved', 'save', true],
    // Nobody could note that the answer went out: the next process finds it in the chat.
    ['after the answer went out', 'finish', false],
    ['after all is done', 'finish', true],
  ] as const)('%s', async (_what, step, isAfter) => {
    const [store, world] = [new VolatileStore(), new World()];
    const question = update({ message: message('/power fridge') as never });
    const first = stage({ store: dying(store, step, isAfter), world, converse: counting });
    // What a dead process would still say is not said: after the step no call reaches Telegram.
    if (step !== 'finish') first.bot.api.config.use(() => Promise.reject(new Error('the process is dead')));
    await first.give(question).catch(() => {});
    await store.release(question.update_id);
    await stage({ store, world, converse: counting }).give(question);
    const texts = [...world.messages.values()].map(({ text }) => text).filter(text => text?.includes(': '));
    expect(texts).toEqual(['fridge: 1']);
    expect((await store.load(String(group.id))).memory.settings.mainsV).toBe(1);
  });
});
