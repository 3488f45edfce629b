import type { Memory } from '#conversation/memory.ts';

/** An invented chat: the words in it must never show in a stored file. */
export const billabong: Memory = {
  version: 2,
  rigs: {
    '': { loads: [{ name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' }], place: 'Wombat Creek' },
    wilhelmina: {
      batteries: [{ count: 2, capacityAh: 105, chemistry: 'agm' }],
      solar: [{ count: 1, powerW: 160, controller: 'mppt' }],
    },
  },
  frames: [
    {
      intent: 'run-time',
      facts: { durationH: 72, loads: [{ name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' }] },
      claims: [],
      from: 'Wilhelmina',
      at: 1_768_467_600_000,
    },
  ],
  claims: [{ who: 'barnaby', value: 4, unit: 'days' }],
  lessons: { wilhelmina: { step: 2, isQuiz: true, done: [0, 1], isOpen: true } },
  settings: { mainsV: 230 },
};

/** A memory told apart by its owner's name. */
export const named = (owner: string): Memory => ({
  version: 2,
  rigs: { [owner]: { dailyUseAh: 30 } },
  frames: [],
  claims: [],
  lessons: {},
  settings: {},
});

/** The words, chat id and reply that a stolen file must not show. */
export const secrets = ['fridge', 'Wilhelmina', 'wilhelmina', 'barnaby', 'Wombat', 'mppt', '-1001234567890'];

/** Two keys (from no real use). */
export const keyA = Buffer.alloc(32, 0xa1).toString('base64');
export const keyB = Buffer.alloc(32, 0xb2).toString('hex');
