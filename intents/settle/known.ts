import type { ParsedMessage } from '#language/reading.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { isSpotted } from '../spotting.ts';
import { settleAsides } from './asides-table.ts';

/** What is commonly known of what an argument is about, by its words. */
export const commonKnowledge = (facts: Facts, parsed: ParsedMessage): Aside | undefined =>
  settleAsides.find(
    ({ spots, when }) => isSpotted(parsed.recognised.words, spots) && (when?.(facts, parsed) ?? true),
  );
