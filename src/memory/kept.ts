import { randomInt } from 'node:crypto';
import type { MemoryStore } from '#conversation/memory-store.ts';

/** Settings every store takes. */
export interface StoreOptions {
  /** The text of MEMORY_KEY; without it the key file is used. */
  readonly key?: string;
  readonly keyFile?: string;
  /** Takes a SQLite file as it is, though something else than this program changed it. */
  readonly isAccepting?: boolean;
  /** After how long a claim that its living taker never finished is given to the next one (ms, default 60 s). */
  readonly releaseAfterMs?: number;
  /** The clock, for the day a memory was last saved. */
  readonly now?: () => number;
}

/** A store with what its operator needs besides. */
export interface KeptStore extends MemoryStore {
  /** Seals everything anew with the newest key. @returns how many values were sealed with an older one */
  rotate(): Promise<number>;
}

/** In the place of the run that has a claim: given back, and given back before anything was sent. */
export const freeRun = { back: 0, unsent: -1 } as const;

/** How long a claim is its taker's, unless told otherwise. */
export const defaultReleaseAfterMs = 60_000;

/** A day as a number: all that is kept of when a chat was last used. @param at ms since 1970 */
export const dayOf = (at: number): number => Math.floor(at / 86_400_000);

/** A first revision that no earlier memory of the chat had, so that a save can't bring forgotten things back. */
export const newRevision = (): number => randomInt(1, 2 ** 47);

/** What a sealed memory is about. @param row the hash of its chat */
export const aboutMemory = (row: Uint8Array, revision: number): string =>
  `${aboutFormerMemory(row)} ${revision}`;

/** The same before memories were bound to their revisions. */
export const aboutFormerMemory = (row: Uint8Array): string => `memory ${Buffer.from(row).toString('hex')}`;

/** What a sealed reply is about. */
export const aboutReply = (update: number): string => `reply ${update}`;
