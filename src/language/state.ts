import type { Named } from '#catalog/appliances.ts';
import type { Gear } from '#catalog/gear-table.ts';
import type { Unit } from '#quantity/units.ts';
import type { Claim, Facts } from '#rig/rig.ts';
import type { Issue, Span } from './issue.ts';
import type { Words } from './lexicon.ts';
import type { Context, Conversion, Cue } from './said.ts';
import type { Token } from './token.ts';

/** Gear of the catalogue, its cues among those that reading knows. */
export interface NamedGear extends Omit<Gear, 'cues'> {
  readonly cues: readonly Cue[];
}

/** A number with its unit as it stands in the message; `value` is in the base unit of its dimension. */
export interface Quantity {
  /** Index of its token. */
  at: number;
  value: number;
  unit: Unit;
  /** "a day", "per hour": the time it is said to be for. */
  per: '' | 'day' | 'hour';
  /** "2 x 100ah": how many of them; 0 where not said. */
  count: number;
  isEach: boolean;
  /** A range was said ("1.1-1.3 A"), and this is its larger end; `low` is the other. */
  isRange: boolean;
  low: number;
  /** Said without a number ("a weekend"): any plain number of the kind goes first. */
  isWeak: boolean;
  /** The pass that used it; '' while free. */
  taken: string;
}

/** Something named: an appliance or a piece of gear. */
export interface Thing {
  kind: 'load' | NamedGear['kind'];
  /** First and one past last token. */
  at: number;
  end: number;
  /** As said, singular. */
  name: string;
  appliance: Named | undefined;
  gear: NamedGear | undefined;
  /** What was found to belong to it. */
  count: number;
  currentA: number;
  powerW: number;
  chargeAh: number;
  energyWh: number;
  perDayAh: number;
  perDayWh: number;
  hours: number;
  minutes: number;
  voltageV: number;
  percent: number;
  dutyPercent: number;
  isAc: boolean;
  isDc: boolean;
  isAverage: boolean;
  /** Its watts are what goes in. */
  isInput: boolean;
  /** Stands for nothing by itself: a second word for a thing already there, or left out on purpose. */
  isDropped: boolean;
  /** Part of its sentence: see segments. */
  segment: number;
}

/** A message on its way through the passes. Each pass adds what it finds; nothing outside sees it. */
export interface State extends Words {
  /** Of each token: the part of its sentence (between commas, "and", "with" …) and the sentence it stands in. */
  segments: number[];
  sentences: number[];
  /** The time was said without a number: a number goes before it. */
  isWeakDuration: boolean;
  /** The drop that the person allows, per cent. */
  dropPercent: number;
  /** A current that names only a cable or a fuse. */
  cableA: number;
  /** Whether the talk is of cables, so that "m" is metres; worked out when first asked. */
  cableTalk: boolean | undefined;
  readonly text: string;
  readonly context: Context;
  tokens: Token[];
  quantities: Quantity[];
  things: Thing[];
  readonly facts: { -readonly [K in keyof Facts]: Facts[K] };
  readonly cues: Set<Cue>;
  claims: Claim[];
  readonly removed: string[];
  readonly corrections: { from?: number; to: number; unit?: string }[];
  readonly owners: string[];
  owner: string | undefined;
  conversion: Conversion | undefined;
  term: string | undefined;
  choice: { letter?: string; text: string } | undefined;
  lesson: { number?: number; topic?: string } | undefined;
  readonly loads: NonNullable<Facts['loads']>;
  readonly bareLoads: NonNullable<Facts['loads']>;
  readonly issues: Issue[];
  fuseA: number | undefined;
  countSaid: number | undefined;
  hoursOff: number | undefined;
  readonly trace: string[];
}

/** The quantity that a token stands for, or undefined. */
export const quantityAt = (state: State, at: number): Quantity | undefined => {
  const token = state.tokens[at];
  return token?.kind === 'quantity' ? state.quantities[token.value] : undefined;
};

/** Text of the token at an index whatever its kind; '' outside. */
export const textAt = (state: State, at: number): string => state.tokens[at]?.text ?? '';

/** The word at an index, '' for anything else. */
export const wordAt = (state: State, at: number): string => {
  const token = state.tokens[at];
  return token?.kind === 'word' ? token.text : '';
};

export const spanOf = (state: State, at: number, end = at + 1): Span => ({
  from: state.tokens[at]?.from ?? 0,
  to: state.tokens[end - 1]?.to ?? state.text.length,
});

/** What a token range reads like in the message. */
export const saidOf = (state: State, at: number, end = at + 1): string => {
  const { from, to } = spanOf(state, at, end);
  return state.text.slice(from, Math.min(to, from + 60));
};

export const markKnown = (state: State, at: number, end = at + 1): void => {
  for (let i = at; i < end; i++) state.tokens[i]!.isKnown = true;
};

/** Ends of sentences and the like. */
export const isStop = (text: string): boolean =>
  text === '.' || text === '?' || text === '!' || text === ';' || text === '\n';

export const thing = (kind: Thing['kind'], at: number, end: number, name: string): Thing => ({
  kind,
  at,
  end,
  name,
  appliance: undefined,
  gear: undefined,
  count: 0,
  currentA: 0,
  powerW: 0,
  chargeAh: -1,
  energyWh: 0,
  perDayAh: 0,
  perDayWh: 0,
  hours: -1,
  minutes: -1,
  voltageV: 0,
  percent: -1,
  dutyPercent: -1,
  isAc: false,
  isDc: false,
  isAverage: false,
  isInput: false,
  isDropped: false,
  segment: 0,
});

/** A fresh state for a message that has been cut into tokens. */
export const createState = (text: string, context: Context, tokens: Token[]): State => ({
  text,
  context,
  tokens,
  get length() {
    return this.tokens.length;
  },
  wordAt(index) {
    const token = this.tokens[index];
    return token !== undefined && token.kind !== 'quantity' ? token.text : '';
  },
  quantities: [],
  things: [],
  segments: [],
  sentences: [],
  cableTalk: undefined,
  isWeakDuration: false,
  dropPercent: 0,
  cableA: 0,
  facts: {},
  cues: new Set(),
  claims: [],
  removed: [],
  corrections: [],
  owners: [],
  owner: undefined,
  conversion: undefined,
  term: undefined,
  choice: undefined,
  lesson: undefined,
  loads: [],
  bareLoads: [],
  issues: [],
  fuseA: undefined,
  countSaid: undefined,
  hoursOff: undefined,
  trace: [],
});
