/**
 * How a language says things: an English phrase that the passes know → the ways to say it, lower case. "#" stands
 * for a number and is carried over, in order. Accents and hyphens don't matter; of phrases that start at the same
 * word the longest counts.
 */
export type Gloss = Readonly<Record<string, readonly string[]>>;

/** A language as data. A new one is a folder `words/<code>/` whose `index.ts` exports this, and a row of `tells.ts`. */
export interface Foreign {
  /** Words and phrases of any kind. */
  readonly phrases: readonly Gloss[];
  /** Names of gear and appliances in the singular; each also occurs with the `endings`. */
  readonly things: readonly Gloss[];
  /** What names end in when there are several of them, or in another case: "s", "en". */
  readonly endings: readonly string[];
  /** Names are written together with what they belong to: "Kompressorkühlbox" is a Kühlbox. */
  readonly isCompounding: boolean;
  /** What is written before a word with an apostrophe, without meaning here: "l'onduleur". */
  readonly elided: readonly string[];
}
