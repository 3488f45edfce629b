import type { CautionCode } from '#answer/words/en.ts';
import type { Denied } from '../denied.ts';

/** What a message may show of a fault, from its facts alone; `signs.ts` tells which are there. */
export type Sign =
  | 'cooler'
  | 'lamp'
  | 'pump'
  | 'phone'
  | 'heater'
  | 'screen'
  | 'high-mains-load'
  | 'fuse'
  | 'inverter'
  | 'dcdc'
  | 'isolator'
  | 'smart-alternator'
  | 'mains-charger'
  | 'any-charger'
  | 'panel'
  | 'two-panels'
  | 'shade'
  | 'lithium'
  | 'battery'
  | 'old-battery'
  | 'starter'
  | 'volts-very-low'
  | 'volts-under-load'
  | 'volts'
  | 'current'
  | 'hot-day';

/** What a sum of what was told may point at. */
export type Bearing = 'cable' | 'battery' | 'load' | 'fuse' | 'charge' | 'level' | 'isolator';

/** The sums that bear on a fault; `compute.ts` works them out. */
export type Weigh =
  | 'drop'
  | 'load'
  | 'limit'
  | 'sag'
  | 'day'
  | 'level'
  | 'fuse'
  | 'noon'
  | 'charge'
  | 'drive'
  | 'age'
  | 'post'
  | 'duty';

/** One cause of a fault. */
export interface Cause {
  /** What a sum may point at, so that it comes first or last. */
  readonly by?: Bearing;
  /** As the first line says it where it is the likeliest. */
  readonly likely: string;
  /** What to measure, the reading that tells, what to do: volts in braces. */
  readonly check: string;
  /** Told figures that speak against it: then it is not named, or its first line is `otherwise`. */
  readonly unless?: Denied;
  readonly otherwise?: string;
}

/** What a question back would be answered by: not asked where that is told. */
export type Asked = 'volts' | 'cable' | 'current' | 'age' | 'ambientC' | 'words';

/** What a reading at the thing, while it should run, tells: under so many volts (of 12), or over. */
interface ReadAt {
  readonly volts: number;
  readonly low: readonly [says: string, by?: Bearing];
  readonly fine: readonly [says: string, by?: Bearing];
}

/** A fault as people meet it: its causes, likeliest first. */
export interface Symptom {
  readonly name: string;
  /** How people say it, in the patterns of `spotting.ts`: small letters, no apostrophes, no numbers. */
  readonly spots: readonly string[];
  /** All of these point at it where the words don't; none: the words alone do. */
  readonly when: readonly Sign[];
  /** Told figures that speak against it: then the next one that the words name is looked at. */
  readonly unless?: Denied;
  readonly causes: readonly [Cause, ...Cause[]];
  /** The one question that helps most, and what answers it. */
  readonly asks: readonly [question: string, by: Asked];
  readonly weighs?: readonly Weigh[];
  readonly reads?: ReadAt;
  /** Said before the general caution of looking for faults. */
  readonly caution?: CautionCode;
  /** Never answered by a larger fuse, and that is said first. */
  readonly isFuse?: true;
}
