import { describe, expect, test } from 'vitest';
import { type Heard, hear } from '#conversation/hear.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { betweenRivals, rigsWith } from '#conversation/whose/rivals.ts';
import type { Stated } from '#rig/rig.ts';

const says = (text: string): Message => ({
  chat: 'c',
  from: 'Ann',
  text,
  at: new Date('2026-01-15T09:00:00Z'),
  kind: 'group',
});
const read = (text: string, facts: Stated = {}): Heard => ({
  ...hear(emptyMemory(), says(text)),
  intent: 'compare',
  facts,
  owner: undefined,
  owners: [],
});
const of = (capacityAh: number, more: Stated = {}): Stated => ({ batteries: [{ capacityAh }], ...more });
const withRigs = (rigs: Memory['rigs']): Memory => ({ ...emptyMemory(), rigs });
const fridge = { loads: [{ name: 'fridge', powerW: 45 }] };

describe('who lasts longest', () => {
  test('is asked of all whose rigs are told, three among them', () => {
    const memory = withRigs({ ann: of(100, fridge), bob: of(75, fridge), cal: of(50, fridge) });
    const asked = betweenRivals(memory, says('who lasts longest'), read('who lasts longest'));
    expect(asked).toMatchObject({ intent: 'run-time', owners: ['me', 'bob', 'cal'], isRivalry: true });
  });
  test('on one load told for all, in the place of their own', () => {
    const memory = withRigs({ ann: of(100), bob: of(75, { dailyUseAh: 90 }) });
    const text = 'if we all run a 45 w fridge who lasts longest';
    const asked = betweenRivals(memory, says(text), read(text, fridge));
    expect(asked.owners).toEqual(['me', 'bob']);
    const rigs = rigsWith(memory, says(text), asked);
    expect(rigs.bob).toEqual(of(75, fridge));
    expect(rigs.ann).toEqual(of(100, fridge));
  });
  test('batteries without a use are no rivals, nor is one rig alone', () => {
    const memory = withRigs({ ann: of(100), bob: of(75, fridge) });
    expect(betweenRivals(memory, says('who lasts longest'), read('who lasts longest')).owners).toEqual([]);
  });
});
