import type { HazardCode } from '#rig/hazard-codes.ts';
import type { Claim, Stated } from '#rig/rig.ts';
import { type Unread, unreadIn } from './account.ts';
import { because, type Reason } from './decide/because.ts';
import { decide, type Option } from './decide/decide.ts';
import { finish } from './decide/finish.ts';
import type { TalkContext } from './decide/frame.ts';
import { shippedModel } from './decide/weights.ts';
import { alarmed } from './hazards/alarm.ts';
import { meaningOf } from './hazards/features.ts';
import { withSentences } from './hazards-by-sentence.ts';
import { convertIn } from './recognise/convert.ts';
import { cuesIn } from './recognise/cues.ts';
import { ownersIn } from './recognise/owners.ts';
import { type Recognised, recognise } from './recognise/recognise.ts';
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

/** Another way to take the message. */
export interface SecondReading {
  readonly intent: string;
  readonly facts: Stated;
  /** Facts in which it differs from the first: "durationH", "intent". */
  readonly differs: readonly string[];
  readonly probability: number;
}

/** What one message says, as it was decided: the question, what is stated, how sure that is. */
export interface ParsedMessage {
  readonly intent: string;
  /** Only what the message plainly states; nothing is filled in. */
  readonly facts: Stated;
  readonly claims: readonly Claim[];
  readonly removed: readonly string[];
  readonly corrects?: { readonly from?: number; readonly to: number; readonly unit?: string };
  /** Whose rig is meant: "me", "us", a name in small letters. */
  readonly owner?: string;
  readonly owners: readonly string[];
  readonly term?: string;
  readonly choice?: string;
  readonly conversion?: Conversion;
  /** What kind of talk the words are, for the tone and the choice of words of an answer; no question is chosen by them. */
  readonly cues: ReadonlySet<Cue>;
  /** The dangers that the words show, the likeliest first. */
  readonly hazards: readonly HazardCode[];
  readonly unread: readonly Unread[];
  /** How likely this reading is, 0–1, and its lead over the next that differs (in nats). */
  readonly probability: number;
  readonly margin: number;
  readonly second?: SecondReading;
  /** How likely the likeliest reading is right as a whole, 0–1, by what has been right before. */
  readonly certainty: number;
  /** Dangers by their codes, each with its probability. */
  readonly dangers: ReadonlyMap<string, number>;
  /** Why it was read so; worked out only where somebody asks. */
  readonly because: () => readonly Reason[];
  readonly words: number;
  readonly recognised: Recognised;
  readonly options: readonly Option[];
}

/** What is meant by a message, and what the talk is of already ("can it run in the boot?", after a generator). */
const spokenOf = (
  text: string,
  { lastIntent = '', things = [], meant = [] }: TalkContext,
): ReadonlySet<string> =>
  new Set([
    ...meaningOf([text, lastIntent, ...things].join('. ')).map(({ concept }) => concept),
    ...meant.map(concept => concept.slice(1)),
  ]);

const apart = new Set(['claims', 'removed', 'corrects', 'owner', 'term', 'choice']);

/**
 * Reads a message. Pure; linear in its length.
 * @param recognised what is mentioned in it, where that is known from another reading: no talk changes it
 */
export function read(
  text: string,
  context: TalkContext = {},
  recognised: Recognised = recognise(text),
): ParsedMessage {
  const model = shippedModel();
  const decision = decide(model, recognised.mentions, context, text);
  const { options, frame, certainty } = decision;
  const hazards = withSentences(model, text, decision.hazards);
  const best = options[0]!;
  const stated = finish(recognised, best, context);
  const facts = factsOf(stated);
  // Options that state the same share the object.
  const other = options.find(o => o.intent !== best.intent || o.stated !== best.stated);
  const conversion = best.intent === 'convert' ? convertIn(recognised) : undefined;
  const { owner, owners } = ownersIn(recognised.words, context.people ?? []);
  return {
    intent: best.intent,
    facts,
    claims: (stated.claims ?? []) as readonly Claim[],
    removed: (stated.removed as readonly string[] | undefined) ?? [],
    corrects: stated.corrects as ParsedMessage['corrects'],
    owner,
    owners,
    term: stated.term as string | undefined,
    choice: stated.choice as string | undefined,
    conversion,
    cues: cuesIn(recognised.words),
    unread: unreadIn(recognised, best, [stated.corrects, conversion]),
    hazards: alarmed(hazards, () => spokenOf(text, context)),
    probability: best.probability,
    margin: other ? Math.log(Math.max(best.probability, 1e-9) / Math.max(other.probability, 1e-9)) : 20,
    second: other && {
      intent: other.intent,
      facts: factsOf(other.stated),
      differs: differing(best, other),
      probability: other.probability,
    },
    certainty,
    dangers: hazards,
    because: () => because(model, frame, best),
    words: recognised.tokens.filter(token => token.kind !== 'sign').length,
    recognised,
    options,
  };
}

const factsOf = (stated: Readonly<Record<string, unknown>>): Stated =>
  Object.fromEntries(Object.entries(stated).filter(([key]) => !apart.has(key))) as Stated;

function differing(a: Option, b: Option): string[] {
  const keys = new Set([...Object.keys(a.stated), ...Object.keys(b.stated)]);
  const facts = [...keys]
    .filter(key => JSON.stringify(a.stated[key]) !== JSON.stringify(b.stated[key]))
    .sort();
  return a.intent === b.intent ? facts : ['intent', ...facts];
}
