import type { Event } from './telegram.ts';

/** A place in the life of a message, and how the process is made to die there. */
export type Point = {
  readonly what: string;
  /** Polling or webhook only; both where not given. */
  readonly only?: 'polling' | 'webhook';
  /** At the start of the process; all others wait until what the one before left is done, and new messages come. */
  readonly isStart?: true;
} & (
  | { readonly tap: string; readonly sql?: { readonly sqlite: string; readonly postgres: string } }
  | { readonly event: Event; readonly nth: number }
  | { readonly stop: true }
);

/** In the order of a process's life, then of a message's. */
export const points: readonly Point[] = [
  {
    what: 'making the tables of a new database',
    isStart: true,
    tap: 'sql before 1',
    sql: { sqlite: 'PRAGMA user_version', postgres: 'INSERT INTO migrations' },
  },
  { what: 'starting: Telegram is asked who we are', isStart: true, event: 'getMe arrives', nth: 1 },
  { what: 'starting: the webhook is set or dropped', isStart: true, event: 'webhook set or dropped', nth: 1 },
  { what: 'starting: old memory is tidied', isStart: true, tap: 'prune during 1' },
  { what: 'updates are handed out', isStart: true, event: 'updates handed out', nth: 1 },
  { what: 'the chat is locked', tap: 'lock in 5' },
  { what: 'before the claim', tap: 'claim before 4' },
  { what: 'the claim is on its way', tap: 'claim during 6' },
  { what: 'after the claim', tap: 'claim after 5' },
  { what: 'before memory is read', tap: 'load before 3' },
  { what: 'after memory is read', tap: 'load after 6' },
  { what: 'before memory and reply are saved', tap: 'save before 4' },
  { what: 'the save is on its way', tap: 'save during 6' },
  {
    what: 'inside the save’s transaction',
    tap: 'sql before 3',
    sql: { sqlite: 'COMMIT', postgres: 'WITH mine' },
  },
  { what: 'after memory and reply are saved', tap: 'save after 5' },
  { what: 'the first send arrives', event: 'send arrives', nth: 1 },
  { what: 'the seventh send arrives', event: 'send arrives', nth: 7 },
  { what: 'a send is carried out, not answered', event: 'send carried out', nth: 4 },
  { what: 'an edit arrives', event: 'edit arrives', nth: 1 },
  { what: 'an edit is carried out, not answered', event: 'edit carried out', nth: 2 },
  { what: 'a send is answered', event: 'send answered', nth: 5 },
  { what: 'before it is noted as answered', tap: 'finish before 4' },
  { what: 'the note is on its way', tap: 'finish during 5' },
  { what: 'after it is noted as answered', tap: 'finish after 6' },
  { what: 'the lock is given back', tap: 'lock after 7' },
  { what: 'the updates are confirmed', only: 'polling', event: 'confirmation arrives', nth: 1 },
  { what: 'the webhook answers', only: 'webhook', event: 'webhook answers', nth: 5 },
  { what: 'while it stops (SIGTERM, then the kill)', stop: true },
];
