import type { Figure } from '#answer/answer.ts';
import type { Bank } from '#engine/battery/bank.ts';
import type { Explored } from '#engine/explore.ts';
import type { Facts, Load } from '#rig/rig.ts';
import type { Bearing } from '../symptom.ts';

/** What a sum says of a fault. */
export interface Finding {
  /** The cause it speaks of, and whether it points at it (true) or clears it (false). */
  readonly by?: Bearing;
  readonly isCause?: boolean;
  readonly says: string;
  /** The first line where it points at a cause, and what is left to say then: mostly nothing. */
  readonly likely?: string;
  readonly mend?: string;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly explored?: Explored<string>;
}

/** What the sums go by. */
export interface FaultCase {
  /** All that is known. */
  readonly facts: Facts;
  /** The same without what memory filled in. */
  readonly told: Facts;
  readonly bank?: Bank;
  /** The battery is told to be old or tired, in words. */
  readonly isTired?: boolean;
  readonly mainsV: number;
  readonly at: Date;
}

/** Blocks of 12 V of a bank, else of the system told. */
export const blocksIn = ({ bank, facts }: Pick<FaultCase, 'bank' | 'facts'>): number =>
  Math.max(1, Math.round((bank?.voltageV ?? facts.systemVoltageV ?? 12) / 12.4));

/** "the kettle", "the fridge and the pump", "all that". */
export const thing = (loads: readonly Load[]): string => {
  const names = [...new Set(loads.map(load => load.name))];
  if (names.length > 2 || names.length === 0) return 'all that';
  return names.map(name => `the ${name}`).join(' and ');
};
