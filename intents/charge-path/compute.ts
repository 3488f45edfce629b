import { bankOf } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { dcdcSizeFor, type Path, recommendPath } from '#engine/charging/path.ts';
import { isolatorClosesV } from '#engine/charging/tables.ts';
import type { Facts } from '#rig/rig.ts';

export interface ChargePath extends Path {
  /** A usual DC-DC charger for the house battery, A, where its size is known. */
  readonly sizeA?: number;
  /** What the house battery should be charged with at most, A, by its kind and what it is told to stand. */
  readonly mostA?: number;
  /** The DC-DC charger told, A. */
  readonly toldA?: number;
  readonly isLithium: boolean;
}

/** Isolator or DC-DC charger for what is known of the two batteries, the alternator and the run between. */
export function computeChargePath(facts: Facts): ChargePath {
  const starter = facts.batteries?.find(b => b.role === 'starter');
  const house = facts.batteries?.filter(b => b !== starter) ?? [];
  // "Two of the same flooded batteries": one entry for both. Lithium told beside lead is the house battery.
  const kind = house.find(b => b.chemistry === 'lfp')?.chemistry ?? house.find(b => b.chemistry)?.chemistry;
  const other = house.find(b => b.chemistry !== undefined && b.chemistry !== kind)?.chemistry;
  // An alternator seen to hold a charging voltage in so many words is a fixed one.
  const isHeld = facts.volts !== undefined && facts.volts > isolatorClosesV && facts.volts < 15.5;
  const bank = bankOf(house.filter(b => kind === undefined || b.chemistry === kind || !b.chemistry));
  const lengthM = facts.cable?.lengthM;
  const toldA = facts.chargers?.find(({ kind: charger }) => charger === 'dcdc')?.currentA;
  return {
    ...recommendPath({
      house: kind,
      starter: starter?.chemistry ?? other,
      alternator: facts.alternator ?? (isHeld ? 'fixed' : undefined),
      lengthM: lengthM !== undefined && facts.cable?.isRoundTrip ? lengthM / 2 : lengthM,
      hasSolar: !!facts.solar?.length,
    }),
    sizeA: bank && dcdcSizeFor(bank),
    mostA: bank && Math.min(limitsOf(bank).chargeA, bank.maxCurrentA ?? Infinity),
    toldA,
    isLithium: kind === 'lfp',
  };
}
