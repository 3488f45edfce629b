import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { describeBattery, describeCharger } from '../describe.ts';
import { bankFor } from '../learned.ts';
import { panelsW } from '../sun.ts';

/** A thing that is there already: as it is called, and whether it does. */
interface Have {
  readonly says: string;
  readonly isEnough: boolean;
}

/** What of the list is there already. */
export interface Owned {
  readonly battery?: Have;
  readonly panel?: Have;
  readonly charger?: Have;
  readonly inverter?: Have;
}

/** As near as this to what is wanted is enough. Common practice. */
const near = 0.95;

const have = (says: string, has: number, wanted: number): Have => ({ says, isEnough: has >= near * wanted });

/** What was told of gear, against what the list asks for. */
export function ownedIn(
  facts: Facts,
  figures: Readonly<Record<'batteryCapacity' | 'panelPower' | 'chargerCurrent' | 'inverterPower', Range>>,
): Owned {
  const bank = bankFor(facts);
  const panelW = panelsW(facts);
  const dcdc = facts.chargers?.find(c => c.kind === 'dcdc' && c.currentA !== undefined);
  const inverterW = facts.inverter?.powerW;
  const house = facts.batteries?.filter(b => b.role !== 'starter') ?? [];
  return {
    ...(bank && {
      battery: have(
        house.map(battery => describeBattery(battery)).join(' and '),
        bank.capacityAh,
        figures.batteryCapacity.value,
      ),
    }),
    ...(panelW !== undefined && {
      panel: have(`${decimals(panelW, 0)} W of solar`, panelW, figures.panelPower.value),
    }),
    ...(dcdc && {
      charger: have(describeCharger(dcdc), present(dcdc.currentA), figures.chargerCurrent.value),
    }),
    ...(inverterW !== undefined && {
      inverter: have(`${inverterW} W inverter`, inverterW, figures.inverterPower.value),
    }),
  };
}
