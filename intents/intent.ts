import type { IntentName } from '#answer/answer.ts';
import type { ForgetWish, Lesson, Reply } from '#answer/reply.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { ChatUnits } from '#quantity/chat-units.ts';
import type { Claim, Facts, LearnedOfRig, Rig, Stated } from '#rig/rig.ts';
import type { Contest } from './contests.ts';

/** A side that somebody takes without a number: of a choice by its name, else "yes" or "no". */
export interface SideTaken {
  readonly who: string;
  readonly says: string;
}

/** Something that people say of the trade, and what was said of it here. */
export interface HeldMaxim {
  /** The name of its row. */
  readonly name: string;
  /** Who says that it is so ("yes"), and who not. */
  readonly sides: readonly SideTaken[];
  /** Which way it is asked about, by words that are nobody's own. */
  readonly asked?: 'yes' | 'no';
  /** The same where that is a share. */
  readonly of?: string;
}

/** What is known of somebody's gear, as far as it is asked about. */
export interface GearOf {
  readonly who: string;
  readonly isOwn: boolean;
  readonly gear: Rig;
}

/** A question about gear that was told: what somebody's is, who has such a one, whose is biggest (or smallest) first. */
export interface GearAsked {
  readonly how: 'of' | 'who' | 'most';
  readonly found: readonly GearOf[];
  /** All that is known of whose it is. */
  readonly rest?: GearOf;
}

/** What surrounds a question, besides its facts. All plain values; nothing reads a clock. */
export interface RequestContext {
  /** Who asks, as displayed. */
  readonly from: string;
  /** Time of the message. */
  readonly at: Date;
  /** Mains voltage of the country, 230 by default (V). */
  readonly mainsV: number;
  /** What the answer is told in, where it isn't metres, °C and mm². */
  readonly units: ChatUnits;
  /** Keys of `facts` that memory filled in: the answer says so ("your 120 Ah AGM"). */
  readonly recalled: ReadonlySet<keyof Facts>;
  /** Whose rig was used, where it is not the chat's own: "dad". */
  readonly owner?: string;
  readonly claims: readonly Claim[];
  /** The question before: what an argument is about where its claims don't tell. */
  readonly argued?: IntentName;
  /** Who takes which side of the question before, and the bot's own answer to it, where no numbers are claimed. */
  readonly contested?: {
    readonly sides: readonly SideTaken[];
    readonly contest?: Contest;
    readonly answer: () => Reply | undefined;
  };
  /** What of the trade is argued or asked about, where no figure settles it. */
  readonly held?: HeldMaxim;
  /** What is asked of gear that was told, with what is known of that. */
  readonly gearAsked?: GearAsked;
  /** Rigs known in the chat, by owner ("" is the chat's). */
  readonly rigs: Readonly<Record<string, Rig>>;
  /** The message as it was read, with what it speaks of among its cues. */
  readonly parsed: ParsedMessage;
  readonly kind: 'private' | 'group';
  readonly isAdmin: boolean;
  readonly lesson?: Lesson;
  /** Where a wish to forget stands. */
  readonly forgetting?:
    | { readonly stage: 'asked' | 'confirmed'; readonly request: ForgetWish }
    | { readonly stage: 'declined' | 'stray' };
  /** Rigs to put back as they were before the asker's last change; null: there was none. */
  readonly undo?: Readonly<Record<string, Rig | null>>;
  /** What the words are about beyond the facts, by `subjectIn` of the question, now or where this turns it. */
  readonly subject?: string;
  /** What the asker's question before was about, in one word. */
  readonly about?: string;
  /** What readings have taught of the rig that the question is about. */
  readonly learned?: LearnedOfRig;
  /** The facts of the question that this one turns ("what if lithium?"), ready for the engine; for pictures alone. */
  readonly before?: () => Facts | undefined;
  /** The same of any rig of the chat, by its owner. */
  readonly learnedOf?: (owner: string) => LearnedOfRig | undefined;
  /** Who shares the rig of an owner, that name first. */
  readonly sharing?: (owner: string) => readonly string[];
  /** The key of the asker's own rig: their name in a group, "" in a private chat. */
  readonly ownKey: string;
  /** One message a person might write, for each question: `{ title, say }`, in the order of the list. */
  readonly examples: () => readonly Example[];
}

/** A way to ask a question, as help shows it. */
export interface Example {
  readonly intent: IntentName;
  readonly title: string;
  readonly say: string;
}

/** Something that is missing: how the bot asks for it, and the key of that sentence. */
export interface Unmet {
  readonly message: string;
  readonly key?: string;
}

/** The facts that a question takes, and what it can't do without. */
export interface Needs<N = Facts> {
  /** What was told ready for the engine (`facts.ts`), or what is missing of it. */
  safeParse(
    stated: Stated,
  ):
    | { readonly success: true; readonly data: N; readonly error?: undefined }
    | { readonly success: false; readonly data?: undefined; readonly error: { issues: readonly Unmet[] } };
  /** @throws Error where something is missing */
  parse(stated: Stated): N;
}

/** What words and figures ask of a question: its subject, and which of the facts told with it are gone by. */
export interface AskedByFigures {
  readonly subject: string;
  readonly takes: readonly (keyof Facts)[];
}

/** A question the bot can answer: one folder of `intents/`. */
export interface Intent<N = Facts> {
  readonly name: IntentName;
  /** As a button or a list shows it: "How long will it last?" */
  readonly title: string;
  /**
   * The facts it needs. Each issue's message is what the bot asks for: written to follow "To work that out I need …".
   */
  readonly needs: Needs<N>;
  /** Keys of Facts that `needs` takes; recall fills only these. */
  readonly takes: readonly (keyof Facts)[];
  /** Facts ("loads.powerW") that each of its answers hangs on, so that this needn't be tried out: the sum is a long one, or it is what was asked about. */
  readonly hangsOn?: ReadonlySet<string>;
  /** What more each answer hangs on, by what else is known. */
  readonly alsoHangsOn?: (facts: Stated) => readonly string[];
  /** Its answer lists what it counted by itself. */
  readonly isItemised?: true;
  /** The question that it becomes with facts that it can't take: a run time that gets sun is a trip. */
  readonly becomes?: (facts: Stated) => IntentName | undefined;
  /**
   * What a message asks about beyond its facts, as its words name it: a symptom, a pair to compare. It stays with the
   * question, so that what turns it is still about that.
   */
  readonly subjectIn?: (words: readonly string[], text: string) => string | undefined;
  /** Whether a message's words ask this, whatever it was read as, or where that is unsure: for what is answered in words, without a sum. */
  readonly isAskedBy?: (parsed: ParsedMessage, about?: string) => 'for-sure' | 'if-unsure' | undefined;
  /** What of it a message's words and figures together ask, whatever it was read as: for what is worked out of figures that no fact holds. */
  readonly askedByFigures?: (parsed: ParsedMessage) => AskedByFigures | undefined;
  /** What it is about, in the one word that people would say ("fuse"): what "it" is in the next line. */
  readonly thing?: string;
  /** What it needs where the words name its subject, in place of `needs`. */
  readonly needsOn?: (subject: string) => Needs<N>;
  /** What its answer chooses between, by what is known and what the words were about: people take sides in that. */
  readonly contest?: (facts: Facts, subject?: string) => Contest | undefined;
  /** A first answer with typical gear where nothing is told of it, which asks for what would help most; undefined where that can't be. */
  readonly guess?: (facts: Stated, setting: RequestContext) => Reply | undefined;
  // Traits: what of it concerns those who know no question by name.
  /** Talk: nothing is worked out, and it is never "the question before". */
  readonly isTalk?: true;
  /** It tells or shows gear and asks nothing of it. */
  readonly isOfGear?: true;
  /** It could be answered whatever is told. */
  readonly asksNothing?: true;
  /** False: it works out nothing by itself, beyond talk and gear. */
  readonly isWorkedOut?: false;
  /** Never one of two readings that are asked about: silence, a question back, what can't wait, what asks back itself. */
  readonly isNeverOffered?: true;
  /** People disagree: it is about the chat's last question, and takes claims. */
  readonly isArgument?: true;
  /** It takes no facts of a rig, or nothing but the figures that it was asked about. */
  readonly hasNoSum?: true;
  /** Numbers that it takes from the words themselves, beside the facts (a controller's plate), in base units. */
  readonly numbersBeside?: (parsed: ParsedMessage) => readonly number[];
  /** A level told with it is the level now. */
  readonly isOfNow?: true;
  /** What it does depends on whether an admin asks. */
  readonly isForAdmins?: true;
  /** People would rather look at its answer. */
  readonly isPictured?: true;
  /** Whether its answer would be closer with a place, by what is known. */
  readonly hangsOnPlace?: (facts: Stated) => boolean;
  /** Facts in, reply out. Pure. */
  readonly reply: (facts: N, setting: RequestContext) => Reply;
}

/** The facts that a question needs, by what its words are about. */
export const needsOf = <N>(intent: Intent<N>, subject: string | undefined): Needs<N> =>
  (subject === undefined ? undefined : intent.needsOn?.(subject)) ?? intent.needs;
