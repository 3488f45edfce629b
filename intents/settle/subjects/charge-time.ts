import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { type Charge, chargeAssumptions, chargeOf } from '#engine/charging/charge.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { explore } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { plain } from '#quantity/round.ts';
import { batteryAir } from '../../battery-air.ts';
import { loadCautions } from '../../cautions.ts';
import { hasUse, useOf } from '../../use.ts';
import { type Dispute, type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';

const isOnCharging = ({ cues }: Dispute): boolean =>
  !cues.has('no-charge') &&
  (cues.has('charge') || cues.has('drive') || cues.has('charger') || cues.has('generator'));

/** The charger spoken of, from its facts, else from its word. */
function chargerIn({ facts, cues }: Dispute): Pick<Source, 'kind' | 'currentA' | 'powerW'> | undefined {
  const told = facts.chargers?.find(c => c.kind !== 'generator') ?? facts.chargers?.[0];
  if (told) return told;
  if (cues.has('dcdc')) return { kind: 'dcdc' };
  return cues.has('isolator') ? { kind: 'isolator' } : undefined;
}

/** "Five hours of driving fill it." "Two." */
export const chargeTimeSubject: Subject = {
  name: 'charge time',
  intent: 'charge-time',
  fits: d => {
    if (d.dimension !== 'time') return 0;
    return (isOnCharging(d) ? 3 : 0) + 2 * weigh(d, 'chargers') + (d.facts.chargeNeededAh ? 1 : 0);
  },
  missing: d => {
    const isBank = bankIn(d.facts) !== undefined || d.facts.chargeNeededAh !== undefined;
    const isCharger = chargerIn(d) !== undefined;
    if (!isBank && !isCharger)
      return 'which battery it is (say “100Ah AGM”) and which charger (say “25A DC-DC”)';
    if (!isBank) return 'which battery it is, and how empty (say “100Ah AGM at 50%”)';
    return isCharger ? undefined : 'which charger it is (say “25A DC-DC”)';
  },
  solve: d => {
    const { facts } = d;
    const known = bankIn(facts);
    const neededAh = facts.chargeNeededAh;
    // A size to reckon with where only what is missing was told: twice that.
    const bank = known ?? {
      capacityAh: Math.max(100, 2 * (neededAh ?? 50)),
      voltageV: chemistryRow(facts.batteries?.[0]?.chemistry ?? 'agm').nominalV,
      chemistry: facts.batteries?.[0]?.chemistry ?? 'agm',
      isChemistryAssumed: facts.batteries?.[0]?.chemistry === undefined,
      isMixed: false,
      count: 1,
    };
    const charger = present(chargerIn(d));
    const source: Source = {
      ...charger,
      alternator: facts.alternator,
      row: chargeRow(bank.chemistry),
      blocks: Math.max(1, Math.round(bank.voltageV / chemistryRow(bank.chemistry).nominalV)),
    };
    const use = useOf(facts, bank.voltageV, d.mainsV, d.at);
    const isDayBack = neededAh === undefined && bank.stateOfChargePercent === undefined && hasUse(facts);
    const charge: Charge = {
      bank,
      isSizeAssumed: !known,
      missingAh: isDayBack ? 1 : neededAh,
      targetPercent: facts.targetChargePercent,
      isIsolator: source.kind === 'isolator',
      temperatureC: facts.ambientC,
      temperature: batteryAir(facts, d.at),
    };
    const assumptions = [
      ...chargeAssumptions(charge),
      ...sourceAssumptions(source),
      ...(isDayBack ? useAssumptions(use) : []),
    ];
    const chargeFor = (
      values: Parameters<typeof dailyUseAh>[1],
      trace?: Parameters<typeof dailyUseAh>[2],
    ) => {
      const missingAh = isDayBack ? dailyUseAh(use, values, trace) : neededAh;
      return chargeOf({ ...charge, missingAh }, sourceCurrentA(source, values, trace), values, trace);
    };
    const { explored } = probe(assumptions, (values, trace) => chargeFor(values, trace).timeH);
    const { figures } = explore<'needed'>(assumptions, 'needed', values => ({
      needed: chargeFor(values).neededAh,
    }));
    return {
      answer: explored.figures.answer,
      dimension: 'time',
      says: isDayBack ? 'putting a day’s use back takes' : 'it takes',
      explored,
      wouldMean: hours => `would mean ${plain(figures.needed.value / hours)} A going in all the time`,
      measure: Number.isFinite(explored.figures.answer.value)
        ? `About ${plain(figures.needed.value)} Ah have to go in; the last part is slow on lead-acid. A shunt monitor shows the amps that really arrive.`
        : 'Lithium must not be charged below freezing, and a good BMS refuses: warm it first.',
      cautions: loadCautions({ ambientC: facts.ambientC }, bank),
    };
  },
};
