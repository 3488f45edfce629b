import type { CautionCode } from '#answer/words/en.ts';
import type { Mention } from '#language/recognise/mention.ts';

/** A plain question of people who are new to it, which needs no figures of theirs: how it is done, whether one may. */
export interface PlainQuestion {
  readonly name: string;
  /** How people ask it, in the patterns of `spotting.ts`: small letters, no apostrophes, no numbers. */
  readonly spots: readonly string[];
  /** It is asked only of such figures. */
  readonly when?: (mentions: readonly Mention[]) => boolean;
  /** Figures told with it change nothing of the answer ("-4.7A, what does the minus mean"). */
  readonly hasAnyFigures?: true;
  /** It asks what no sum tells: whatever else it was read as, this is what is answered. */
  readonly isBeforeSums?: true;
  /** The first line: yes or no where that is asked. */
  readonly says: string;
  readonly lines: readonly string[];
  readonly caution?: CautionCode;
  readonly next?: readonly string[];
}
