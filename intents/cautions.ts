import type { CautionCode } from '#answer/words/en.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Bank } from '#engine/battery/bank.ts';
import type { Facts } from '#rig/rig.ts';

/** Cautions that the loads and the bank of a question call for, whatever was asked. */
export function loadCautions(facts: Facts, bank?: Bank): CautionCode[] {
  const found: CautionCode[] = [];
  const rows = (facts.loads ?? []).map(load => applianceOf(load.name));
  if (rows.some(row => row?.isMedical)) found.push('medical');
  if (bank?.isMixed) found.push('mixed-batteries');
  if (bank?.chemistry === 'lfp' && (facts.ambientC ?? 20) < 5) found.push('lithium-cold');
  if (rows.some(row => row?.id === 'diesel heater')) found.push('fuel-heater');
  return found;
}
