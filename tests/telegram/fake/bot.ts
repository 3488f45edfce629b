import { HttpError } from 'grammy';
import type { Message, Update } from 'grammy/types';
import { type Answer, inWords } from '#answer/answer.ts';
import { emptyMemory } from '#conversation/memory.ts';
import type { MemoryStore } from '#conversation/memory-store.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import type { BotSettings, Converse, Log, Meter } from '#telegram/ops/deps.ts';
import { type CampBot, createBot } from '#telegram/updates/bot.ts';
import { nowSec, update } from './people.ts';
import { isDelivered } from './privacy.ts';
import { Refusal } from './rules.ts';
import { me, type Payload, token, World } from './world.ts';

export const answer = (text: string, more: Partial<Answer> = {}): Answer => ({
  ...inWords('run-time', text),
  ...more,
});

const step = {
  name: 'usable',
  formula: 'usable = capacity × depth = 100 Ah × 0.5',
  value: 50,
  unit: 'Ah',
  source: '',
};

/**
 * Stands in for the conversation: answers every message with its own words and the question before, and remembers it.
 * "rig …" sets the asker's rig where an admin says so; "forget everything" forgets.
 */
export const parrot: Converse = (memory, message) => {
  if (message.text.includes('crash')) throw new Error('the parrot fell off');
  if (message.text === 'forget everything')
    return {
      memory: message.isAdmin ? emptyMemory() : memory,
      answer: answer(message.isAdmin ? 'All forgotten.' : 'Only an admin can.', { intent: 'forget' }),
    };
  const said = { who: `${message.from || '?'}: ${message.text}`.slice(0, 60), value: 1, unit: 'h' };
  const before = (message.onto ?? memory.frames.at(-1))?.claims[0]?.who;
  const text = `Answer to ${message.from || 'nobody'}: ${message.text}\n${before === undefined ? 'first' : `after <${before}>`}`;
  return {
    memory: {
      ...memory,
      frames: [
        {
          intent: 'run-time',
          facts: {},
          claims: [said],
          from: message.from.toLowerCase(),
          at: message.at.getTime(),
        },
      ],
    },
    answer: answer(text, {
      intent: message.text === 'help' ? 'help' : message.text.startsWith('rig') ? 'rig' : 'run-time',
      working: [step],
      next: ["what if it's cloudy?", 'make it 5 days'],
    }),
  };
};

export const silent: Log = { debug() {}, info() {}, warn() {}, error() {} };

/** A line that broke: nobody knows on which side of the call. */
const cut = (method: string): HttpError =>
  new HttpError(
    `Network request for '${method}' failed!`,
    Object.assign(new Error('reset'), { code: 'ECONNRESET' }),
  );

/** A bot in a world without a network: its calls go straight to the world's rules. */
export interface Stage {
  readonly bot: CampBot;
  readonly world: World;
  readonly store: MemoryStore;
  readonly logged: { level: string; fields: object; message: string }[];
  /** Gives the bot an update, its message stands in the world first; and waits until all pictures of it are there. */
  give(given: Omit<Update, 'update_id'> | Update): Promise<void>;
  /** What stands in a chat from the bot, oldest first. */
  answers(chat?: number): Message[];
  clock: { now: number };
  /** What privacy mode kept from the bot. */
  readonly passedBy: Update[];
}

export interface StageOptions {
  readonly settings?: Partial<BotSettings>;
  readonly converse?: Converse;
  readonly store?: MemoryStore;
  readonly world?: World;
  readonly clock?: { now: number };
  readonly meter?: Meter;
  /** Whether the bot gets only what Telegram hands to one in privacy mode. */
  readonly isPrivacyOn?: boolean;
}

export function stage({
  settings,
  converse = parrot,
  store = new VolatileStore(),
  world = new World(),
  clock = { now: nowSec * 1000 },
  meter,
  isPrivacyOn = false,
}: StageOptions = {}): Stage {
  world.now = () => clock.now;
  const logged: Stage['logged'] = [];
  const passedBy: Update[] = [];
  const put = (level: string) => (fields: object, message: string) =>
    void logged.push({ level, fields, message });
  const log: Log = { debug: put('debug'), info: put('info'), warn: put('warn'), error: put('error') };
  const bot = createBot(
    { token, isPaced: false, ...settings },
    { converse, store, log, ...(meter && { meter }), now: () => clock.now },
    { botInfo: me },
  );
  bot.api.config.use(async (_prev, method, payload) => {
    try {
      const fault = world.takeFault(method);
      if (fault instanceof Refusal) throw fault;
      if (fault === 'cut-before') throw cut(method);
      const result = world.call(method, structuredClone((payload ?? {}) as Payload));
      if (fault === 'cut-after') throw cut(method);
      if (fault === 'lost-after') throw new Refusal(502, 'Bad Gateway');
      return { ok: true, result } as never;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      const { code, message, parameters } = error;
      return {
        ok: false,
        error_code: code,
        description: message,
        ...(parameters && { parameters }),
      } as never;
    }
  });
  return {
    bot,
    world,
    store,
    logged,
    clock,
    passedBy,
    give: async given => {
      const full = 'update_id' in given ? given : update(given);
      world.hear(full);
      if (full.callback_query !== undefined) world.tap(full.callback_query);
      if (isPrivacyOn && !isDelivered(world, full)) return void passedBy.push(full);
      await bot.handleUpdate(structuredClone(full));
      await bot.settled();
    },
    answers: chat =>
      [...world.messages.values()].filter(
        m => m.from?.id === me.id && (chat === undefined || m.chat.id === chat),
      ),
  };
}
