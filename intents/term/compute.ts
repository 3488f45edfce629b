import { bankIn } from '#engine/battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { explore } from '#engine/explore.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';

/** What the battery spoken of holds and what of it is for use (Ah), drawn slowly; undefined without its size. */
export function usableOf(
  facts: Facts,
): { readonly capacityAh: number; readonly isLithium: boolean; readonly usable: Range } | undefined {
  const bank = bankIn(facts);
  if (!bank) return undefined;
  const { figures } = explore<'usable'>(bankAssumptions(bank), 'usable', values => ({
    usable: usableCapacityAh({ bank, currentA: 0 }, values),
  }));
  return { capacityAh: bank.capacityAh, isLithium: bank.chemistry === 'lfp', usable: figures.usable };
}
