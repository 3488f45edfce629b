import { present } from '#basics/present.ts';
import { residentMb, start, startWords } from './bot.ts';
import { round, type Section } from './measure.ts';
import { mixed } from './mixed.ts';

const wait = (ms: number) => new Promise(resolve => setTimeout(resolve, ms));

/** Chats that write by turns, and how often one of them does: far below the limits of a person. */
const chats = 200;
const everyMs = 200;
/** Of so many questions one is edited, and of so many answers a button is pressed. */
const editEvery = 5;
const pressEvery = 7;
const sampleMs = 5000;
const firstChat = 700_000_000;

/** A private chat as its person and Telegram see it. */
interface Chat {
  readonly id: number;
  lastId: number;
  question: number;
  answer: number;
  button?: string;
  /** What is waited for. */
  isAsked: boolean;
  isEdited: boolean;
  pressed?: string;
}

const numberIn = (body: string, name: string): number =>
  Number(new RegExp(`"${name}"(?::|\\r\\n\\r\\n)(-?\\d+)`).exec(body)?.[1]);

/** The slope of a straight line through points, by least squares. */
export function slopeOf(points: readonly (readonly [x: number, y: number])[]): number {
  const mean = (k: 0 | 1): number => points.reduce((sum, point) => sum + point[k], 0) / points.length;
  const [x0, y0] = [mean(0), mean(1)];
  const square = points.reduce((sum, [x]) => sum + (x - x0) ** 2, 0);
  return points.reduce((sum, [x, y]) => sum + (x - x0) * (y - y0), 0) / square;
}

/** Hours of a club in minutes: a thousand people ask, edit and press at an even pace. Is anything lost, does it grow? */
export async function soak(minutes = 10): Promise<Section> {
  const bot = await start(startWords);
  const { api } = bot;
  const pid = present(bot.child.pid);
  const all = Array.from({ length: chats }, (_, i): Chat => {
    return { id: firstChat + i, lastId: 0, question: 0, answer: 0, isAsked: false, isEdited: false };
  });
  const presses = new Set<string>();
  api.onCall = (method, body) => {
    if (method === 'answerCallbackQuery') {
      presses.delete(/"callback_query_id":"([^"]+)"/.exec(body)?.[1] ?? '');
      return undefined;
    }
    const chat = all[numberIn(body, 'chat_id') - firstChat];
    if (chat === undefined) return undefined;
    if (method.startsWith('edit')) chat.isEdited = false;
    if (!method.startsWith('send') || method === 'sendChatAction') return undefined;
    chat.isAsked = false;
    chat.isEdited = false;
    chat.answer = ++chat.lastId;
    chat.button = /callback_data\\?":\\?"([^"\\]+)/.exec(body)?.[1];
    return { message_id: chat.answer, date: 0, chat: { id: chat.id, type: 'private' }, text: 'x' };
  };
  const counts = { questions: 0, edits: 0, presses: 0, unready: 0 };
  const act = (chat: Chat, turn: number): void => {
    const date = Math.floor(Date.now() / 1000);
    const person = { id: chat.id, is_bot: false, first_name: 'Kim' };
    const room = { id: chat.id, type: 'private', first_name: 'Kim' };
    const text = mixed[(turn + Math.floor(turn / chats)) % mixed.length];
    const isOpen = chat.isAsked || chat.isEdited;
    if (isOpen) counts.unready++;
    if (!isOpen && turn % editEvery === 0 && chat.question > 0) {
      counts.edits++;
      chat.isEdited = true;
      const message = { message_id: chat.question, date, edit_date: date, chat: room, from: person, text };
      api.put({ edited_message: message });
      return;
    }
    if (!isOpen && turn % pressEvery === 0 && chat.button !== undefined) {
      counts.presses++;
      const id = `p${turn}`;
      presses.add(id);
      const from = { id: 1, is_bot: true, first_name: 'Bench' };
      const message = { message_id: chat.answer, date, chat: room, from, text: 'x' };
      api.put({
        callback_query: { id, from: person, chat_instance: '1', message, data: chat.button },
      });
      return;
    }
    counts.questions++;
    chat.isAsked = true;
    chat.question = ++chat.lastId;
    api.put({ message: { message_id: chat.question, date, chat: room, from: person, text } });
  };
  const points: [number, number][] = [];
  try {
    const began = performance.now();
    const sample = setInterval(
      () => points.push([(performance.now() - began) / 60_000, residentMb(pid)]),
      sampleMs,
    );
    for (let turn = 0; performance.now() - began < minutes * 60_000; turn++) {
      const late = began + turn * everyMs - performance.now();
      if (late > 0) await wait(late);
      act(present(all[turn % chats]), turn);
    }
    const isDone = (): boolean => presses.size === 0 && all.every(chat => !chat.isAsked && !chat.isEdited);
    for (let i = 0; i < 120 && !isDone(); i++) await wait(500);
    clearInterval(sample);
    const lost =
      presses.size + all.filter(chat => chat.isAsked).length + all.filter(chat => chat.isEdited).length;
    const late = points.filter(([minute]) => minute >= Math.min(2, minutes / 3));
    const slope = slopeOf(late);
    return {
      title: `A soak of ${minutes} minutes: ${chats} people in private, ${1000 / everyMs} messages a second`,
      lines: [
        {
          what: 'questions, edits, presses',
          value: `${counts.questions}, ${counts.edits}, ${counts.presses}`,
        },
        { what: 'without an answer at the end', value: String(lost), goal: '0', isMet: lost === 0 },
        { what: 'asked on before the last answer was there', value: String(counts.unready) },
        { what: 'memory after the first two minutes, MB', value: round(late[0]?.[1] ?? 0) },
        { what: 'at the end, MB', value: round(late.at(-1)?.[1] ?? 0) },
        { what: 'slope, MB a minute', value: round(slope), goal: '≤ 0.1', isMet: slope <= 0.1 },
      ],
    };
  } finally {
    await bot.stop();
  }
}
