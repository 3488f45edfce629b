import { createHash } from 'node:crypto';
import type { User } from 'grammy/types';
import type { Memory } from '#conversation/memory.ts';
import { nameOf } from './people.ts';

/** People of one chat whose names are told apart; beyond, whoever was met first and keeps nothing makes room. */
const mostPeople = 300;

/** What stands for a person in a memory: the same in each chat of one bot, and no id. */
const tagOf = (bot: number, person: number): string =>
  createHash('sha256').update(`${bot} ${person}`).digest('base64url').slice(0, 12);

/** Whether a name is the one, or was made from it: "Sam", "Sam B", "Sam 2". */
const isMadeOf = (name: string, first: string): boolean =>
  name === first || (name.startsWith(`${first} `) && name.length <= first.length + 4);

/** "Sam"; where another Sam is known, "Sam B" by the last name, else "Sam 2". */
function freeName(first: string, lastName: string | undefined, taken: ReadonlySet<string>): string {
  const initial = [...(lastName ?? '')].find(letter => /\p{L}/u.test(letter));
  const wishes = [first, ...(initial === undefined ? [] : [`${first} ${initial.toUpperCase()}`])];
  for (let n = 2; n < mostPeople + 3; n++) wishes.push(`${first} ${n}`);
  return wishes.find(name => !taken.has(name.toLowerCase())) ?? first;
}

/** A person's name in a chat, and the chat's memory with that name held for them. */
export interface Named {
  readonly name: string;
  readonly memory: Memory;
}

/**
 * The name under which a person's things are kept in a group: their first name, made unlike the others' there.
 * It stays theirs; who changes their first name takes their things along.
 */
export function nameIn(memory: Memory, user: User | undefined, bot: number): Named {
  const first = nameOf(user).slice(0, 54).trimEnd();
  if (user === undefined || first === '') return { name: '', memory };
  const tag = tagOf(bot, user.id);
  const { [tag]: known, ...others } = memory.people ?? {};
  if (known !== undefined && isMadeOf(known, first)) return { name: known, memory };
  const taken = new Set(Object.values(others).map(name => name.toLowerCase()));
  const name = freeName(first, user.last_name, taken);
  const people = roomIn({ ...others, [tag]: name }, memory);
  return {
    name,
    memory: known === undefined ? { ...memory, people } : renamed({ ...memory, people }, known, name),
  };
}

function roomIn(people: Record<string, string>, { rigs, lessons }: Memory): Record<string, string> {
  const entries = Object.entries(people);
  if (entries.length <= mostPeople) return people;
  const idle = entries.findIndex(([, name]) => !rigs[name.toLowerCase()] && !lessons[name.toLowerCase()]);
  return Object.fromEntries(entries.toSpliced(Math.max(0, idle), 1));
}

/** What was kept under a former name, under the new one; what is there already stays. */
function renamed(memory: Memory, from: string, to: string): Memory {
  const [old, now] = [from.toLowerCase(), to.toLowerCase()];
  const move = <T>(things: Record<string, T>): Record<string, T> => {
    const { [old]: mine, ...rest } = things;
    return mine === undefined || rest[now] !== undefined ? things : { ...rest, [now]: mine };
  };
  return {
    ...memory,
    rigs: move(memory.rigs),
    lessons: move(memory.lessons),
    frames: memory.frames.map(frame => (frame.from === old ? { ...frame, from: now } : frame)),
    ...(memory.talk?.lastFrom === old && { talk: { ...memory.talk, lastFrom: now } }),
  };
}
