import type { Rig } from '#rig/rig.ts';
import type { Assumed, Figure, Verdict, WorkingStep } from './answer.ts';
import type { Chart } from './chart/chart.ts';
import type { CautionCode } from './words/en.ts';

export interface Lesson {
  /** Index of the step that is open, from 0. */
  readonly step: number;
  /** Whether a quiz question of that step waits for its answer. */
  readonly isQuiz: boolean;
  /** Steps whose question was answered right. */
  readonly done: readonly number[];
  readonly isOpen: boolean;
}

/** What somebody wishes to be forgotten: a rig (whose, where it isn't their own), all of the chat, or all of them. */
export interface ForgetWish {
  readonly which: 'rig' | 'chat' | 'me';
  readonly owner?: string;
}

/** What an answer asks the conversation to keep. Only `conversation/` applies it. */
interface Remember {
  /** The rig of an owner ("" is the chat's), as it shall be from now on; null deletes it. */
  readonly rigs?: Readonly<Record<string, Rig | null>>;
  readonly lesson?: Lesson;
  /** Forget all that is kept of the chat, or of the asker. */
  readonly forget?: 'chat' | 'me';
  /** A wish to forget, asked back: it stands open for a yes of the same person. */
  readonly asksToForget?: ForgetWish;
  /** The change of `rigs` can't be undone. */
  readonly isFinal?: boolean;
}

/** A question answered, before it is put on a screen. */
export interface Reply {
  /** The first line: the answer itself, with the number. */
  readonly headline: string;
  /** Further sentences, most useful first; three at most for a phone. */
  readonly lines?: readonly string[];
  /** Where something told won't do: what does, as a first line ("16 mm² or thicker"). */
  readonly instead?: string;
  readonly verdict?: Verdict;
  readonly figures?: Readonly<Record<string, Figure>>;
  /** Most influential first. */
  readonly assumed?: readonly Assumed[];
  /** Names of assumptions that a line says already: the short line leaves them out. */
  readonly assumedInLines?: readonly string[];
  /** The working, printed only when somebody asks. */
  readonly working?: () => readonly WorkingStep[];
  /** A picture of it, as data, made only when somebody looks. */
  readonly chart?: () => Chart;
  readonly cautions?: readonly CautionCode[];
  /** Messages to tap or type next, three at most, each understood by the bot. */
  readonly next?: readonly string[];
  readonly remember?: Remember;
  /** What `understood.rig` shows, for the rig intent. */
  readonly rig?: Rig;
}
