import type { Frame } from './memory.ts';

/** A message as every transport hands it in. Plain data. */
export interface Message {
  readonly chat: string;
  /** The person's display name; one chat's key for "mine". */
  readonly from: string;
  readonly text: string;
  readonly at: Date;
  readonly kind: 'private' | 'group';
  /** A shared location. */
  readonly location?: { readonly latitudeDeg: number; readonly longitudeDeg: number };
  /** The question whose answer it replies to. */
  readonly onto?: Frame;
  /** A line that the bot wrote itself: it is heard, and not answered. */
  readonly isBot?: boolean;
  /** The bot was called by its name: it is never left without a word to what is asked then. */
  readonly isCalled?: boolean;
  /** Whether the sender may change or delete what belongs to the whole chat; default true. */
  readonly isAdmin?: boolean;
}
