import type { Claim } from '#rig/rig.ts';
import { talkWithout } from '../kept/talk-kept.ts';
import type { Frame, Memory } from '../memory.ts';
import { unbound } from './shared.ts';

/**
 * A chat's memory without what one person brought in, for whoever asks for that and for whoever leaves. Others'
 * questions that went by that person's rig hold its figures, and a step back or a wish to forget that touches it
 * would bring it back or name them: these go too.
 * @param key the person's name as a key (`personKey`)
 * @param own where their own gear is kept: in private that is the chat's own, ""
 */
export function withoutPerson(all: Memory, key: string, own = key): Memory {
  const memory = unbound(all, key);
  const isTheirs = (name: string): boolean => name.toLowerCase() === key;
  const notTheirs = ({ who }: Pick<Claim, 'who'>): boolean => !isTheirs(who);
  const { rigs, learned, lessons, people, claims, frames, talk, choice, forgetting, undo, ...others } =
    memory;
  const { passing, passingAt, passingFrom, ...rest } = others;
  const left = talk && talkWithout(talk, key);
  const isGone = ({ from, owner, lent }: Frame): boolean =>
    from === key || owner === key || lent?.some(({ who }) => who === key) === true;
  return {
    ...rest,
    ...(passing && passingFrom !== key && { passing, passingAt, passingFrom }),
    rigs: without(rigs, own),
    ...some('learned', learned && without(learned, own)),
    lessons: without(lessons, key),
    ...some('people', people && kept(people, ([, name]) => !isTheirs(name))),
    claims: claims.filter(notTheirs),
    frames: frames
      .filter(frame => !isGone(frame))
      .map(frame => ({ ...frame, claims: frame.claims.filter(notTheirs) })),
    ...(left && { talk: left }),
    // Asked about with the question of the same moment.
    ...(choice &&
      !frames.some(frame => frame.at === choice.at && isGone(frame)) && {
        choice,
      }),
    ...(forgetting && forgetting.from !== key && forgetting.request.owner !== key && { forgetting }),
    ...(undo && undo.from !== key && !(own in undo.rigs) && { undo }),
  };
}

const kept = <T>(record: Record<string, T>, isKept: (entry: [string, T]) => boolean): Record<string, T> =>
  Object.fromEntries(Object.entries(record).filter(isKept));

const without = <T>(record: Record<string, T>, key: string): Record<string, T> =>
  kept(record, ([name]) => name !== key);

/** A part of a memory, left out where nothing is in it. */
const some = <K extends string, T extends object>(name: K, part: T | undefined): { [key in K]?: T } =>
  part !== undefined && Object.keys(part).length > 0 ? ({ [name]: part } as { [key in K]: T }) : {};
