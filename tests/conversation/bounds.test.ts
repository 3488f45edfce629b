import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory, memorySchema } from '#conversation/memory.ts';
import { writeMemory } from '#memory/document.ts';
import { Vault } from '#memory/seal.ts';
import { mostKept } from '#rig/rig.ts';

const vault = Vault.make([Buffer.alloc(32, 7)]);
/** How many bytes a memory takes as it is kept. */
const sealed = (memory: Memory): number => vault.seal(writeMemory(memory), 'memory').length;

const start = Date.UTC(2026, 3, 3, 9);

/** A group in which somebody says something, a minute apart. */
function group() {
  let memory: Memory = emptyMemory();
  let minute = 0;
  return {
    say: (from: string, text: string): string => {
      minute += 1;
      const at = new Date(start + minute * 60_000);
      const done = converse(memory, { chat: '-1', kind: 'group', from, text, at });
      memory = done.memory;
      return done.answer.text;
    },
    memory: () => memory,
  };
}

describe('a chat’s memory is bounded', () => {
  test('past so many rigs a new one is refused in so many words; those kept can be changed', () => {
    const talk = group();
    for (let i = 0; i < mostKept.rigs; i++)
      expect(talk.say(`p${i}`, 'my rig: 100Ah AGM, fridge 1.2A')).toMatch(/^Noted/);
    const before = talk.memory().rigs;
    const answer = talk.say('late', 'my rig: 100Ah AGM, fridge 1.2A');
    expect(answer).toMatch(/I keep 50 rigs in a chat/);
    expect(answer).toMatch(/forget my rig/);
    expect(talk.memory().rigs).toEqual(before);
    expect(talk.say('p7', 'my rig: 200Ah lithium, fridge 1.2A')).toMatch(/200 Ah/);
    expect(Object.keys(talk.memory().rigs)).toHaveLength(mostKept.rigs);
  });

  test('of many who learn, those longest away go first', () => {
    const talk = group();
    for (let i = 0; i < mostKept.rigs + 5; i++) talk.say(`p${i}`, 'teach me');
    const learners = Object.keys(talk.memory().lessons);
    expect(learners).toHaveLength(mostKept.rigs);
    expect(learners).toContain(`p${mostKept.rigs + 4}`);
    expect(learners).not.toContain('p0');
  });

  test('with twenty people who each told a rig, ask, borrow and learn, it is under 8 kB', () => {
    const talk = group();
    const names = 'ann bea cal dot eli fay gus hal ivy jed kit lou mia ned oki pam rod sue tim una'.split(
      ' ',
    );
    for (const [i, name] of names.entries()) {
      talk.say(
        name,
        `my rig: 2x ${100 + i}Ah AGM, fridge 45W, 4 lights 5W each 5h a day, 160W solar, 1000W inverter`,
      );
      talk.say(name, 'teach me');
      talk.say(name, `how long will a 60W fan and a fridge 1.2A run on ${100 + i}Ah agm, 3 days in Dubbo?`);
      if (i > 0) talk.say(name, `how long with ${names[i - 1]}'s battery?`);
    }
    const memory = talk.memory();
    expect(Object.keys(memory.rigs)).toHaveLength(names.length);
    expect(memory.frames.some(frame => frame.lent)).toBe(true);
    expect(memorySchema.safeParse(memory).success).toBe(true);
    expect(sealed(memory)).toBeLessThan(8 * 1024);
  });

  test('with eight people arguing beside any twenty rigs it stays so', { timeout: 120_000 }, () => {
    const amount = (low: number, high: number) => fc.integer({ min: low, max: high });
    const rig = fc.record({
      ah: amount(40, 900),
      count: amount(1, 4),
      kind: fc.constantFrom('AGM', 'lithium', 'gel'),
      fridgeW: amount(20, 90),
      lightH: amount(1, 12),
      solarW: amount(50, 900),
      inverterW: amount(150, 3000),
      days: amount(1, 9),
      place: fc.constantFrom('Dubbo', 'Cairns', 'Broken Hill', 'Hobart', 'Esperance'),
    });
    const group20 = fc.array(rig, { minLength: 20, maxLength: 20 });
    const claimed = fc.array(amount(1, 12), { minLength: 8, maxLength: 8 });
    fc.assert(
      fc.property(group20, claimed, (rigs, days) => {
        const talk = group();
        for (const [i, one] of rigs.entries()) {
          const { ah, count, kind, fridgeW, lightH, solarW, inverterW } = one;
          talk.say(
            `camper${i}`,
            `my rig: ${count}x ${ah}Ah ${kind}, fridge ${fridgeW}W, fan 0.7A, 4 lights 5W each ${lightH}h a day, ${solarW}W solar, ${inverterW}W inverter`,
          );
          talk.say(`camper${i}`, 'teach me');
          talk.say(`camper${i}`, `how long will mine last in ${one.place}, ${one.days} days?`);
        }
        talk.say('camper0', 'will 200Ah agm run my fridge 2A average and a 60W fan for 4 days in Dubbo?');
        for (const [i, value] of days.entries()) talk.say(`arguer${i}`, i % 2 ? 'no way' : `${value} days`);
        talk.say('camper1', 'how long will it go?');
        for (const [i, value] of days.entries()) talk.say(`arguer${i}`, `I say it lasts ${value} days`);
        expect(talk.memory().claims.length).toBeGreaterThanOrEqual(8);
        return sealed(talk.memory()) < 8 * 1024;
      }),
      { numRuns: 4 },
    );
  });
});
