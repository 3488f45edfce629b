import { present } from '#basics/present.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { type Circuit, circuitAssumptions, circuitCurrents } from '#engine/cable/circuit.ts';
import { dcdcSizeFor, recommendPath } from '#engine/charging/path.ts';
import { explore } from '#engine/explore.ts';
import type { Facts } from '#rig/rig.ts';
import { type At, constant, type Link } from './link.ts';

/** A charger of less than this share of the Ah, A, is slow. Common practice. */
const leastChargeC = 0.1;

/** Too small a charger, or an isolator where it is wrong. */
export function chargerLink(facts: Facts, bank: Bank): Link | undefined {
  const charger = facts.chargers?.find(c => c.kind !== 'generator' && c.currentA !== undefined);
  const isolator = facts.chargers?.find(c => c.kind === 'isolator');
  const about = { house: bank.isChemistryAssumed ? undefined : bank.chemistry, alternator: facts.alternator };
  const sizeA = dcdcSizeFor(bank);
  // An isolator is no good on a smart alternator or with lithium, however large.
  const isWrong =
    (about.house === 'lfp' || about.alternator === 'smart') && recommendPath(about).recommendation === 'dcdc';
  if (isolator && isWrong)
    return {
      part: 'isolator',
      share: 0.5,
      name: 'chargerCurrent',
      unit: 'A',
      explored: constant(sizeA),
      wanted: sizeA,
      mend: sizeA,
    };
  if (!charger || charger.kind === 'isolator') return undefined;
  const wanted = leastChargeC * bank.capacityAh;
  return {
    part: 'charger',
    share: present(charger.currentA) / wanted,
    name: 'chargerCurrent',
    unit: 'A',
    explored: constant(present(charger.currentA)),
    wanted,
    mend: sizeA,
  };
}

/** More than the battery takes. */
export function chargeLimitLink(facts: Facts, bank: Bank): Link | undefined {
  const largest = Math.max(
    0,
    ...(facts.chargers ?? []).map(c => (c.kind === 'isolator' ? 0 : (c.currentA ?? 0))),
  );
  const { chargeA } = limitsOf(bank);
  if (largest === 0 || largest <= chargeA) return undefined;
  return {
    part: 'charge-limit',
    share: chargeA / largest,
    name: 'chargerCurrent',
    unit: 'A',
    explored: constant(largest),
    wanted: chargeA,
    mend: dcdcSizeFor(bank),
  };
}

/** Share of an alternator's rating that a house battery may take for long: hot and idling it gives little more. Common practice. */
const alternatorShare = 0.5;

/** A DC-DC charger against the alternator that feeds it. */
export function alternatorLink(facts: Facts, bank: Bank, { mainsV }: At): Link | undefined {
  const dcdc = facts.chargers?.find(c => c.kind === 'dcdc' && c.currentA !== undefined);
  if (!dcdc || facts.alternatorA === undefined) return undefined;
  const circuit: Circuit = {
    kind: 'dcdc',
    use: 'critical',
    facts: { ...facts, chargers: [dcdc] },
    voltageV: bank.voltageV > 18 ? 24 : 12,
    mainsV,
  };
  const explored = explore<'figure'>(circuitAssumptions(circuit), 'figure', (values, trace) => ({
    figure: circuitCurrents(circuit, values, trace).cableA,
  }));
  const wanted = alternatorShare * facts.alternatorA;
  return {
    part: 'alternator',
    share: wanted / explored.figures.figure.value,
    name: 'inputCurrent',
    unit: 'A',
    explored,
    wanted,
  };
}
