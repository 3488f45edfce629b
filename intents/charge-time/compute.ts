import { present } from '#basics/present.ts';
import type { Assumption, Values } from '#engine/assumption.ts';
import { type Bank, bankIn, bankOfOne } from '#engine/battery/bank.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { absorptionVoltage } from '#engine/battery/charging.ts';
import { chargeRateC, limitsOf } from '#engine/battery/limits.ts';
import { chemistryRow, lithiumChargeByTemperature } from '#engine/battery/tables.ts';
import {
  type Charge,
  chargeAssumptions,
  chargeOf,
  dcdcInputA,
  guessedBankAh,
} from '#engine/charging/charge.ts';
import { currentLeft } from '#engine/charging/rules.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { alternatorSpareA } from '#engine/charging/tables.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { meanwhileA, meanwhileAssumptions } from '#engine/loads/over.ts';
import {
  dailyYield,
  flowingAh,
  peakSunHours,
  type SolarCase,
  solarAssumptions,
} from '#engine/solar/model.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { levelRead } from '../level.ts';
import { panelsW, siteOf, sunOf } from '../sun.ts';
import { hasUse, useOf } from '../use.ts';
import { type ChargeSource, chargeSourceOf } from './source.ts';

export { chargeRow } from '#engine/battery/charge-table.ts';

type ChargeKey =
  | 'chargeTime'
  | 'chargeNeeded'
  | 'timeTo80'
  | 'current'
  | 'startCharge'
  | 'endCharge'
  | 'sunHoursPerDay'
  | 'drawA';

export interface ChargeTime extends Explored<ChargeKey> {
  readonly bank: Bank;
  readonly source: ChargeSource;
  readonly isSizeAssumed: boolean;
  /** It is a day's use that has to be put back. */
  readonly isDailyUse: boolean;
  /** Hours of charging that the person has, where told. */
  readonly availableH?: number;
  /** It was asked whether that is enough; else how long it takes, and the hours are said beside it. */
  readonly isEnoughAsked: boolean;
  /** What a DC-DC charger takes from the vehicle, A. */
  readonly inputA?: number;
  readonly isBigForAlternator: boolean;
  /** What the battery should be charged with at most, A. */
  readonly mostA: number;
  /** Absorption voltage at the temperature told, V; lead-acid only. */
  readonly absorptionV?: number;
}

/** Sun for a panel that charges: current in full sun, A, and full-sun hours a day. */
function sunFor(facts: Facts, sun: SolarCase, bank: Bank, values: Values, trace?: Trace) {
  const hours = peakSunHours(sun, values);
  const told = facts.solarAhPerDay ?? (facts.solarWhPerDay && facts.solarWhPerDay / bank.voltageV);
  if (told) return { currentA: hours > 0 ? told / hours : 0, hours };
  const { chemistry, voltageV: nominalVoltageV } = bank;
  const panel = { ...sun, powerW: panelsW(facts) ?? 0, nominalVoltageV, chemistry };
  const flowing = flowingAh(dailyYield(panel, values, trace), panel, values);
  return { currentA: hours > 0 ? flowing / hours : 0, hours };
}

/** Hours of charging within the time told: driving hours, or the sun's. */
function availableHours(facts: Facts, isSun: boolean, sunHours: number): number | undefined {
  const { durationH, drivingHoursPerDay } = facts;
  if (isSun)
    return durationH === undefined ? undefined : durationH < 12 ? durationH : (durationH / 24) * sunHours;
  if (drivingHoursPerDay === undefined) return durationH;
  const days = durationH === undefined || durationH < 24 ? 1 : durationH / 24;
  return drivingHoursPerDay * days;
}

/** Nobody waits so long for a battery, h. */
export const endlessH = 28 * 24;

/** What a kind of battery may be charged with at a temperature of its own and at best, per hour of its capacity, and up to where that holds, °C. */
export function chargeSharesAt(chemistry: Chemistry, temperatureC: number) {
  const row = lithiumChargeByTemperature.find(([belowC]) => temperatureC < belowC);
  return {
    share: chargeRateC({ chemistry }, temperatureC),
    best: chargeRateC({ chemistry }),
    upToC: Math.min(60, row?.[0] ?? 60),
  };
}

/** What a charger puts back in the hours told, where nobody says into what. */
export interface PutBack {
  readonly explored: Explored<'chargePutBack'>;
  readonly hours: number;
  readonly isDriven: boolean;
}

const ratedCharger = ({ chargers }: Facts) =>
  chargers?.find(({ currentA, kind }) => currentA !== undefined && kind !== 'generator');
const hoursOn = ({ drivingHoursPerDay, durationH }: Facts): number | undefined =>
  drivingHoursPerDay ?? durationH;

/** "Drove 2 h with a 25 A DC-DC, how much did that put back": a charger's amps and hours, and no battery that they go into. */
export const isPutBack = (facts: Facts): boolean =>
  ratedCharger(facts) !== undefined &&
  hoursOn(facts) !== undefined &&
  !bankIn(facts) &&
  facts.chargeNeededAh === undefined;

/** What such a charger puts back in such a time. @throws where one of them isn't told (`isPutBack`) */
export function computePutBack(facts: Facts): PutBack {
  const { kind, currentA } = present(ratedCharger(facts));
  const hours = present(hoursOn(facts));
  const source: Source = { kind, currentA, row: chargeRow('agm'), blocks: 1 };
  const explored = explore<'chargePutBack'>(sourceAssumptions(source), 'chargePutBack', (values, trace) => ({
    chargePutBack: sourceCurrentA(source, values, trace) * hours,
  }));
  return { explored, hours, isDriven: facts.drivingHoursPerDay !== undefined };
}

/** The facts that tell what runs. */
const useKeys = ['loads', 'dailyUseAh', 'dailyUseWh', 'inverter'] as const;

/** How long (h of charging) until a battery is as full as wanted, what has to go in (Ah), and where the time told gets to. */
export function computeChargeTime(
  facts: Facts,
  setting: Pick<RequestContext, 'recalled' | 'parsed' | 'at'>,
): ChargeTime {
  const source = chargeSourceOf(facts, setting);
  const known = bankIn(facts);
  const isSocTold =
    facts.volts !== undefined || facts.batteries?.some(b => b.stateOfChargePercent !== undefined);
  const isDailyUse =
    facts.chargeNeededAh === undefined &&
    !isSocTold &&
    hasUse(facts) &&
    (!known || !(setting.recalled.has('loads') || setting.recalled.has('dailyUseAh')));
  const chemistry = facts.batteries?.find(b => b.chemistry)?.chemistry;
  const use = useOf(facts, known?.voltageV ?? chemistryRow(chemistry ?? 'agm').nominalV);
  const daily = isDailyUse ? dailyUseAh(use, likelyOf(useAssumptions(use))) : undefined;
  const missingAh = facts.chargeNeededAh ?? daily;
  // What is told with a charge and is not what is to be put back runs while it charges.
  const isMeanwhile =
    !isDailyUse &&
    hasUse(facts) &&
    !useKeys.some(key => facts[key] !== undefined && setting.recalled.has(key));
  const bank = known ?? bankOfOne({ capacityAh: guessedBankAh(missingAh ?? 100), chemistry });
  const charge: Charge = {
    bank,
    isSizeAssumed: !known,
    missingAh,
    targetPercent: facts.targetChargePercent,
    isIsolator: source.kind === 'isolator',
    isFlat: setting.parsed.cues.has('flat-battery'),
    temperatureC: facts.ambientC,
    temperature: batteryAir(facts, setting.at),
    level: levelRead(facts, bank, setting.parsed.cues),
  };
  const sun = sunOf(facts, setting.at);
  const giver = source.kind === 'solar' ? undefined : giverOf(facts, source, bank);
  const assumptions: Assumption[] = [
    ...chargeAssumptions(charge),
    ...(giver ? sourceAssumptions(giver) : solarAssumptions(sun)),
    ...(isDailyUse ? useAssumptions(use) : []),
    ...(isMeanwhile ? meanwhileAssumptions(use) : []),
  ];
  // "We leave in two days; how long does it need?" asks for a time, and a stay of days is not time on charge.
  const isOnlyHowLong = setting.parsed.cues.has('ask-how-long') && !setting.parsed.cues.has('ask-can-it');
  const isStay = isOnlyHowLong && (facts.durationH ?? 0) >= 24;
  const availableH = isStay ? undefined : availableHours(facts, !giver, peakSunHours(sun));
  // What takes all that comes in at its worst still charges at its likely best: an end that is no end is a month.
  let mostH: number | undefined;
  const explored = explore<ChargeKey>(assumptions, 'chargeTime', (values, trace) => {
    const fromSun = giver ? undefined : sunFor(facts, sun, bank, values, trace);
    const offeredA = giver ? sourceCurrentA(giver, values, trace) : present(fromSun).currentA;
    const drawA = isMeanwhile ? meanwhileA(use, values, trace) : 0;
    // The sun of a day pays for the night as well.
    const sunH = fromSun?.hours ?? 0;
    const I_l = sunH > 0 ? (drawA * 24) / sunH : drawA;
    const sourceA = isMeanwhile ? run(currentLeft, { I_s: offeredA, I_l }, trace) : offeredA;
    const missing = isDailyUse ? dailyUseAh(use, values, trace) : facts.chargeNeededAh;
    const done = chargeOf({ ...charge, missingAh: missing }, sourceA, values, trace);
    mostH ??= Number.isFinite(done.timeH) ? Math.max(endlessH, done.timeH) : done.timeH;
    return {
      chargeTime: Math.min(mostH, done.timeH),
      chargeNeeded: done.neededAh,
      timeTo80: Math.min(mostH, done.timeTo80H),
      current: done.currentA,
      startCharge: done.startPercent,
      endCharge: availableH === undefined ? 100 : done.percentAfter(availableH),
      sunHoursPerDay: sunH,
      drawA,
    };
  });
  const ratingA = source.kind === 'dcdc' ? source.charger?.currentA : undefined;
  const inputA = ratingA === undefined ? undefined : dcdcInputA(ratingA);
  const isCold = facts.ambientC !== undefined && bank.chemistry !== 'lfp';
  return {
    ...explored,
    bank,
    source,
    isSizeAssumed: !known,
    isDailyUse,
    availableH,
    isEnoughAsked: !isOnlyHowLong,
    inputA,
    isBigForAlternator: (inputA ?? 0) > alternatorSpareA,
    mostA: limitsOf(bank).chargeA,
    absorptionV: isCold ? absorptionVoltage(bank, facts.ambientC) : undefined,
  };
}

/** The source as the engine knows it. */
function giverOf(facts: Facts, source: Exclude<ChargeSource, { kind: 'solar' }>, bank: Bank): Source {
  return {
    kind: source.kind,
    currentA: source.charger?.currentA,
    powerW: source.charger?.powerW,
    generatorW: source.generatorW,
    alternator: facts.alternator,
    ...siteOf(facts),
    row: chargeRow(bank.chemistry),
    blocks: Math.max(1, Math.round(bank.voltageV / chemistryRow(bank.chemistry).nominalV)),
  };
}
