import type { Claim, Facts, Load } from '#rig/rig.ts';
import type { Issue } from './issue.ts';

export type { Cue } from './words/en/cues.ts';
import type { Cue } from './words/en/cues.ts';


/** Two quantities to convert between ("60 W at 12 V in amps"). */
export interface Conversion {
  readonly value: number;
  readonly unit: string;
  /** Symbol of the unit asked for, where said. */
  readonly to?: string;
  /** The voltage, time or chemistry that bridges them, where said. */
  readonly voltageV?: number;
  readonly hours?: number;
}

/** What one message said. Facts are only what it plainly states; nothing is filled in. */
export interface Said {
  readonly facts: Facts;
  readonly cues: ReadonlySet<Cue>;
  /** Claims of people, in order of mention. */
  readonly claims: readonly Claim[];
  /** Loads or gear to leave out ("without the lights", "forget the heater"), by name. */
  readonly removed: readonly string[];
  /** "75 not 57": the wrong number and the right one, with the unit where said. */
  readonly corrections: readonly { readonly from?: number; readonly to: number; readonly unit?: string }[];
  /** Whose rig is meant: "me" for the speaker, a name in lower case ("sam", "dad"), absent: not said. */
  readonly owner?: string;
  /** All owners named, in order ("mine or dads" → ["me", "dad"]). */
  readonly owners: readonly string[];
  readonly conversion?: Conversion;
  /** The word or phrase asked after, small, in the singular, without articles; the glossary knows its aliases. */
  readonly term?: string;
  /** The answer to a quiz: letter a–d and/or the words. */
  readonly choice?: { readonly letter?: string; readonly text: string };
  /** Which lesson is wanted, by number or topic word. */
  readonly lesson?: { readonly number?: number; readonly topic?: string };
  /** Loads named without any figure ("will it run the coffee machine"): same shape, no draw. */
  readonly bareLoads: readonly Load[];
  /** The rating of a fuse spoken of, A: "can I put a 60 A fuse on it". */
  readonly fuseA?: number;
  /** "Six of those", where the thing is of the message before. */
  readonly count?: number;
  /** Hours a day that something stays off, where no load is named with it: "what if I turn it off for 10 h". */
  readonly hoursOff?: number;
  /** A number with a unit that found no owner; kept so that an intent or a follow-up may use it. */
  readonly loose: readonly { readonly value: number; readonly unit: string; readonly isDaily?: boolean }[];
  /** Bare numbers without any unit. */
  readonly numbers: readonly number[];
  readonly issues: readonly Issue[];
  /** How many words, and how many of them were understood: chatter has few. */
  readonly words: number;
  readonly known: number;
  /** The names of the passes that added something, in order: the trace for "why did you read that". */
  readonly trace: readonly string[];
}

/** What reading may know of its surroundings. Never the clock: `at` is the message's own time. */
export interface Context {
  /** Time of the message, for "till tuesday lunch", "next month". */
  readonly at: Date;
  /** Who writes, lower case. */
  readonly from: string;
  /** Names known in this chat, lower case, for "sam's". */
  readonly people: readonly string[];
  /** The question asked before, if any, so that "and if I use 6mm" is read as its kind of quantity. */
  readonly lastIntent?: string;
}
