import { chargeAtRest } from '#engine/battery/rest.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import type { Explored } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryAir } from './battery-air.ts';
import { clockHour } from './clock.ts';
import type { RequestContext } from './intent.ts';
import { bankFor } from './learned.ts';
import { floorPercentOf } from './level.ts';
import { isSpotted } from './spotting.ts';
import { panelsW } from './sun.ts';
import { hasUse, useOf } from './use.ts';

/** Hour of the morning that it shall see, where no time is told: the sun is up, and people are. */
const morningH = 9;
/** The morning after this one where it is as near as that, h. */
const leastH = 4;

/** A charger as usually fitted, A. Common practice. */
const usualChargerA = 20;

/** Whether to charge now: how long it lasts, and how long it shall. */
export interface Should {
  readonly levelPercent: number;
  readonly isByVolts: boolean;
  readonly floorPercent: number;
  /** Absent where nothing that it runs is known: the level alone tells. */
  readonly lasting?: Explored<'runTime' | 'usableCapacity' | 'dailyUse'>;
  /** What is missing to its floor, Ah; 0 above it, or where its size isn't known. */
  readonly underAh: number;
  /** What charges it: the rating told, else a usual one, A. */
  readonly chargerA: number;
  readonly wantedH: number;
  readonly isTimeTold: boolean;
  readonly hasSun: boolean;
}

/** "Should I drive?", "do we have to start the engine?" */
const shall = ['should|shall|need|must|ought|have_to|got_to|better'];

/** Whether it is asked if charging is wanted at all, and not how long it takes. */
function isShouldAsked(facts: Facts, { parsed }: Pick<RequestContext, 'parsed'>): boolean {
  const { cues, recognised } = parsed;
  if (['ask-how-long', 'ask-what-size', 'ask-which', 'ask-how-much'].some(cue => cues.has(cue as never)))
    return false;
  const isGoal =
    (facts.targetChargePercent ?? facts.chargeNeededAh ?? facts.drivingHoursPerDay) !== undefined;
  if (isGoal) return false;
  const isDrained = facts.netCurrentA !== undefined && facts.netCurrentA < 0;
  return isDrained || facts.volts !== undefined || isSpotted(recognised.words, shall);
}

/** How full it is: as told, or by its volts at rest. */
function levelOf(facts: Facts): Pick<Should, 'levelPercent' | 'isByVolts'> | undefined {
  const bank = bankFor(facts);
  if (bank?.stateOfChargePercent !== undefined)
    return { levelPercent: bank.stateOfChargePercent, isByVolts: false };
  const chemistry = facts.batteries?.find(one => one.chemistry)?.chemistry;
  if (facts.volts === undefined || facts.voltsTaken === 'charging' || !chemistry) return undefined;
  return { levelPercent: chargeAtRest(facts.volts, chemistry).value, isByVolts: true };
}

/** Should I drive (or charge) now; undefined where that isn't asked, or it isn't known how full it is. */
export function computeShould(facts: Facts, setting: RequestContext): Should | undefined {
  const level = isShouldAsked(facts, setting) ? levelOf(facts) : undefined;
  if (!level) return undefined;
  const bank = bankFor(facts);
  const chemistry = bank?.chemistry ?? facts.batteries?.find(one => one.chemistry)?.chemistry ?? 'agm';
  const toMorning = (morningH - clockHour(facts, setting) + 24) % 24;
  const wantedH = facts.durationH ?? (toMorning < leastH ? toMorning + 24 : toMorning);
  const lasting =
    bank && hasUse(facts)
      ? exploreRunTime({
          bank: { ...bank, stateOfChargePercent: level.levelPercent },
          use: useOf(facts, bank.voltageV, setting.mainsV, setting.at),
          assumptions: bankAssumptions(bank, facts.depthOfDischargePercent, batteryAir(facts, setting.at)),
        })
      : undefined;
  const floorPercent = floorPercentOf(facts, chemistry);
  return {
    ...level,
    floorPercent,
    underAh: bank ? (Math.max(0, floorPercent - level.levelPercent) * bank.capacityAh) / 100 : 0,
    chargerA: facts.chargers?.find(({ currentA }) => currentA !== undefined)?.currentA ?? usualChargerA,
    lasting,
    wantedH,
    isTimeTold: facts.durationH !== undefined,
    hasSun: panelsW(facts) !== undefined,
  };
}
