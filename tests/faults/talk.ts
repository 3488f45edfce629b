import type { Message, Update } from 'grammy/types';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import type { Memory } from '#conversation/memory.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { createBot } from '#telegram/updates/bot.ts';
import { silent } from '../telegram/fake/bot.ts';
import { me, type Payload, token, World } from '../telegram/fake/world.ts';

/** One chat's talk, with what an undisturbed bot makes of it. */
export interface Talk {
  readonly chat: number;
  readonly updates: readonly Update[];
  /** The answer to each question; to an edited one, what its answer was changed to. */
  readonly texts: readonly string[];
  /** The memory before the first question and after each. */
  readonly memories: readonly Memory[];
}

/**
 * A talk's turns. Each changes the memory, and the steps through the lessons change it differently when they are
 * taken twice, so that a message that counted twice, or half, shows in the end. The last edits the second.
 */
const editedTurn = 1;
const turns = (n: number): string[] => [
  `my rig is ${90 + n}Ah AGM`,
  `fridge ${(2 + (n % 9)) / 2}A, ${n % 2 === 0 ? 'no' : '120W'} solar, how long?`,
  'teach me',
  'next',
  `what if it was ${n % 2 === 0 ? 'lithium' : `${150 + n}Ah`}?`,
  `fridge ${(3 + (n % 9)) / 2}A, ${n % 2 === 0 ? 'no' : '120W'} solar, how long?`,
];

const perRound = turns(0).length;
let nextId = 1;

/** One message of a talk. The words are plain in private; in a group they follow the command, a person a round. */
function update(n: number, text: string, dateSec: number, round: number): Update {
  const id = nextId++;
  const isPrivate = n % 3 !== 0;
  const from = { id: 5000 + n, is_bot: false, first_name: `Person${n}` };
  const member = { id: 900_000 + 10 * n + round, is_bot: false, first_name: `Camper${round}of${n}` };
  const chat = isPrivate
    ? { id: from.id, type: 'private' as const, first_name: from.first_name }
    : { id: -1_000_000_100_000 - n, type: 'supergroup' as const, title: `Campers ${n}` };
  const message = {
    message_id: id,
    date: dateSec,
    chat,
    from: isPrivate ? from : member,
    text: isPrivate ? text : `/power ${text}`,
  };
  return { update_id: 10_000 + id, message: message as Message & Update.NonChannel };
}

/** The same message with other words; its number is the one that it gets when it is heard. */
function edited({ message }: Update, { update_id, message: other }: Update): Update {
  const edit = { ...present(message), text: present(other).text, edit_date: present(message).date + 1 };
  const message_id = { get: () => present(message).message_id, enumerable: true };
  return { update_id, edited_message: Object.defineProperty(edit, 'message_id', message_id) as never };
}

/** Lets an undisturbed bot of the same code hear the talk: what it says and keeps is what must come out. */
async function undisturbed(updates: readonly Update[]): Promise<Pick<Talk, 'texts' | 'memories'>> {
  const [store, world] = [new VolatileStore(), new World()];
  const now = () => (present(present(updates[0]).message).date + 1) * 1000;
  const heard = (one: Update): Update => {
    world.hear(one);
    return structuredClone(one);
  };
  const bot = createBot(
    { token, mainsV: 230, isPaced: false },
    { converse, store, log: silent, now },
    { botInfo: me },
  );
  const texts: string[] = [];
  bot.api.config.use(async (_prev, method, payload) => {
    if (method === 'sendMessage' || method === 'editMessageText') texts.push((payload as Payload).text);
    return { ok: true, result: world.call(method, structuredClone(payload) as Payload) } as never;
  });
  const chat = String(present(present(updates[0]).message).chat.id);
  const memories = [(await store.load(chat)).memory];
  for (const one of updates) {
    await bot.handleUpdate(heard(one));
    memories.push((await store.load(chat)).memory);
  }
  if (texts.length !== updates.length)
    throw new Error('the undisturbed bot did not answer each question once');
  return { texts, memories };
}

/**
 * The talk of a chat.
 * @param n its number
 * @param repeats how often its turns come again, with other numbers
 * @param most how many messages at most
 */
export async function talkOf(n: number, repeats = 1, most = Number.POSITIVE_INFINITY): Promise<Talk> {
  const dateSec = Math.floor(Date.now() / 1000);
  const texts = Array.from({ length: repeats }, (_, i) => turns(n + i)).flat();
  const updates: Update[] = [];
  for (const [i, text] of texts.slice(0, most).entries()) {
    const said = update(n, text, dateSec, Math.floor(i / perRound));
    const isEdit = i % perRound === perRound - 1;
    updates.push(isEdit ? edited(present(updates[i + 1 - perRound + editedTurn]), said) : said);
  }
  const chat = present(present(updates[0]).message).chat.id;
  return { chat, updates, ...(await undisturbed(updates)) };
}
