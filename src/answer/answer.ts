import type { HazardCode } from '#rig/hazard-codes.ts';
import type { Claim, Rig, Stated } from '#rig/rig.ts';
import type { Chart } from './chart/chart.ts';

export type Verdict = 'yes' | 'tight' | 'no' | null;

export const intentNames = [
  'run-time',
  'battery-size',
  'energy-budget',
  'solar-size',
  'solar-yield',
  'charge-time',
  'inverter-check',
  'cable-size',
  'fuse-size',
  'charge-level',
  'charge-path',
  'battery-type',
  'battery-bank',
  'trip',
  'starter-reserve',
  'generator',
  'settle',
  'convert',
  'term',
  'learn',
  'rig',
  'help',
  'privacy',
  'forget',
  'fault',
  'emergency',
  'solar-wiring',
  'compare',
  'list',
  'rig-check',
  'none',
  'unclear',
] as const;
export type IntentName = (typeof intentNames)[number];

/** One main figure: a number with its range, or a choice in words ("dcdc", "ness"). */
export type Figure =
  | { readonly value: number; readonly unit: string; readonly low: number; readonly high: number }
  | { readonly value: string };

/** An assumption as an answer shows it; the list is ordered by influence, strongest first. */
export interface Assumed {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly why: string;
}

/** One line of the working: a rule applied (formula with numbers in) or a table looked up. */
export interface WorkingStep {
  readonly name: string;
  /** As the chat shows it, without the result: words, numbers and units, and what each number means. */
  readonly words?: string;
  /** "usable = capacity × depth = 100 Ah × 0.5": symbols, then numbers. */
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/** How far ahead the reading taken is (nats), what came second and in what it differs, and the reasons for the first. */
interface Reading {
  readonly margin: number;
  readonly second?: { readonly intent: string; readonly differs: readonly string[] };
  readonly because: readonly { readonly reason: string; readonly weight: number }[];
}

/** The answer as data, as `ask --json` shows it. */
export interface Answer {
  readonly intent: IntentName;
  /** What the chat shows: plain text, never markup. */
  readonly text: string;
  readonly verdict: Verdict;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly understood: Understood;
  /** Codes of the hazards seen in the message, or in what memory adds. */
  readonly hazards: readonly HazardCode[];
  /** Every number of the message that is in no fact. */
  readonly unread: readonly { readonly text: string; readonly why: string }[];
  /** Every fact told that the answer doesn't hang on: "inverter.surgeW" and what was told. */
  readonly unused?: readonly { readonly fact: string; readonly value: unknown }[];
  /** How sure the reading is. */
  readonly reading?: Reading;
  readonly assumed: readonly Assumed[];
  readonly working: readonly WorkingStep[];
  readonly cautions: readonly string[];
  /** Whether the message only thanked: a nod is all that it wants. Absent: it didn't. */
  readonly isThanks?: true;
  /** Up to three things to ask next, each a message that the bot itself understands. */
  readonly next: readonly string[];
  /** A picture of the answer, as data, made only when somebody looks; `chart/png.ts` draws it. Not part of the JSON. */
  readonly chart?: () => Chart;
  /** Whether there is any working, without printing it. Not part of the JSON. */
  readonly hasWorking?: () => boolean;
  /**
   * Works it out once more, for what is shown only when somebody asks later. It holds the question and none of the
   * sums, so it may be kept for long. Not part of the JSON.
   */
  readonly again?: () => Pick<Answer, 'working' | 'chart'>;
}

/** What was read of the message, literally: what it states, and what it says about what was told before. */
export type Understood = Stated & {
  readonly claims?: readonly Claim[];
  readonly rig?: Rig;
  /** Names to leave out. */
  readonly removed?: readonly string[];
  readonly corrects?: { readonly from?: number; readonly to: number; readonly unit?: string };
  /** Whose gear is spoken of, where it isn't the writer's. */
  readonly owner?: string;
  readonly term?: string;
  /** The answer to a quiz. */
  readonly choice?: string;
};

/** An answer that is words and nothing else. */
export const inWords = (intent: IntentName, text: string): Answer => ({
  intent,
  text,
  verdict: null,
  figures: {},
  understood: {},
  hazards: [],
  unread: [],
  assumed: [],
  working: [],
  cautions: [],
  next: [],
});
