import { createHash } from 'node:crypto';
import type { User } from 'grammy/types';
import { personKey } from '#conversation/kept/recall.ts';
import { talkRenamed } from '#conversation/kept/talk-kept.ts';
import type { Memory } from '#conversation/memory.ts';
import { withoutPerson } from '#conversation/whose/without-person.ts';
import { nameOf } from './people.ts';

/** People of one chat whose names are told apart; beyond, whoever was met first and keeps nothing makes room. */
const mostPeople = 300;

/** What stands for a person in a memory: the same in each chat of one bot, and no id. */
const tagOf = (bot: number, person: number): string =>
  createHash('sha256').update(`${bot} ${person}`).digest('base64url').slice(0, 12);

/** What stands for somebody's handle ("@ann_smith"), which they may change: not the handle itself. */
const handleTag = (bot: number, handle: string): string =>
  `@${createHash('sha256').update(`${bot} @${handle.toLowerCase()}`).digest('base64url').slice(0, 11)}`;
const isHandle = (tag: string): boolean => tag.startsWith('@');

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
  const first = nameOf(user);
  if (user === undefined || first === '') return { name: '', memory };
  const tag = tagOf(bot, user.id);
  const { [tag]: known, ...others } = memory.people ?? {};
  const handle = user.username === undefined ? undefined : handleTag(bot, user.username);
  const isHandleKnown = handle === undefined || memory.people?.[handle] === known;
  if (known !== undefined && isMadeOf(known, first) && isHandleKnown) return { name: known, memory };
  const taken = new Set(
    Object.entries(others)
      .filter(([mark]) => !isHandle(mark))
      .map(([, name]) => name.toLowerCase()),
  );
  const isSame = known !== undefined && isMadeOf(known, first);
  const name = isSame ? known : freeName(first, user.last_name, taken);
  const people = roomIn({ ...others, [tag]: name, ...(handle && { [handle]: name }) }, memory);
  return {
    name,
    memory: known === undefined ? { ...memory, people } : renamed({ ...memory, people }, known, name),
  };
}

/** Handles of people whom the chat's memory knows, put by their names: "@ann_smith's rig" is "Ann's rig". */
export function withNames(memory: Memory, text: string, bot: number): string {
  return text.replace(/(?<![\w@])@([A-Za-z]\w{3,31})(?!\w)/g, (whole, handle: string) => {
    return memory.people?.[handleTag(bot, handle)] ?? whole;
  });
}

/** A chat's memory without somebody who left it: their things, name and handle. */
export function withoutUser(memory: Memory, { id }: User, bot: number): Memory {
  const name = memory.people?.[tagOf(bot, id)];
  return name === undefined ? memory : withoutPerson(memory, personKey(name));
}

/** Lets go of whoever was met first and keeps nothing, handle and all, where there are too many. */
function roomIn(people: Record<string, string>, { rigs, lessons }: Memory): Record<string, string> {
  const entries = Object.entries(people);
  const named = entries.filter(([tag]) => !isHandle(tag));
  const isFull = named.length > mostPeople || entries.length > 2 * mostPeople;
  if (!isFull) return people;
  const isIdle = (name: string): boolean => !rigs[name.toLowerCase()] && !lessons[name.toLowerCase()];
  const [, idle] = named.find(([, name]) => isIdle(name)) ?? named[0] ?? [];
  return Object.fromEntries(entries.filter(([, name]) => name !== idle));
}

/** What was kept under a former name, under the new one; what is there already stays. */
function renamed(memory: Memory, from: string, to: string): Memory {
  const [old, now] = [from.toLowerCase(), to.toLowerCase()];
  const move = <T>(things: Record<string, T>): Record<string, T> => {
    const { [old]: mine, ...rest } = things;
    return mine === undefined || rest[now] !== undefined ? things : { ...rest, [now]: mine };
  };
  const name = (who: string): string => (who === old ? now : who);
  const sharing = Object.entries(memory.shared ?? {}).map(([who, kept]) => [name(who), name(kept)]);
  return {
    ...memory,
    rigs: move(memory.rigs),
    ...(memory.shared && { shared: Object.fromEntries(sharing) }),
    claims: memory.claims.map(claim => ({ ...claim, who: name(claim.who) })),
    ...(memory.learned && { learned: move(memory.learned) }),
    lessons: move(memory.lessons),
    frames: memory.frames.map(frame => ({
      ...frame,
      from: name(frame.from),
      ...(frame.lent && { lent: frame.lent.map(one => ({ ...one, who: name(one.who) })) }),
    })),
    ...(memory.talk && { talk: talkRenamed(memory.talk, old, now) }),
  };
}
