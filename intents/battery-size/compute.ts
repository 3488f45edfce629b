import { present } from '#basics/present.ts';
import { bankOf, nominalVoltage } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { nextUsualSize, requiredCapacityAh } from '#engine/battery/required.ts';
import { capacityOfDepths } from '#engine/battery/rules.ts';
import { autonomyDays, chemistryRow, dailyDepth } from '#engine/battery/tables.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { fitsBank } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { batteryCurrent } from '#engine/inverter/rules.ts';
import { type Day, dayOf, useAssumptions } from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import { hasHours, isWhole } from '#engine/loads/reading.ts';
import type { Chemistry, Facts, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { batteryAir } from '../battery-air.ts';
import { cools } from '../facts.ts';
import type { RequestContext } from '../intent.ts';
import { useOf } from '../use.ts';

/** A battery as it is bought: one block, or several alike in parallel. */
export interface Next {
  readonly count: number;
  readonly sizeAh: number;
}

export interface Sized {
  readonly explored: Explored<'batteryCapacity' | 'dailyUse'>;
  readonly chemistry: Chemistry;
  readonly voltageV: number;
  readonly next: Next;
  /** Charge used over the time, Ah, and the biggest single draw, A. */
  readonly needAh: number;
  readonly peakA: number;
  /** What the next usual size stands without a break, A. */
  readonly limitA: number;
  /** What years of daily cycling would ask for, Ah on the label; lead-acid only. */
  readonly longLifeAh?: number;
}

export interface BatterySize extends Sized {
  readonly isChemistryAssumed: boolean;
  readonly durationH: number;
  readonly isDurationAssumed: boolean;
  /** Where nobody said a chemistry: the same in lithium. */
  readonly other?: Sized;
  /** The battery there is, Ah on its label. */
  readonly ownAh?: number;
}

/** Longest night, h. */
const nightH = 14;

function sizeIn(
  chemistry: Chemistry,
  isChemistryAssumed: boolean,
  facts: Facts,
  setting: RequestContext,
  durationH: number,
): Sized {
  const told = facts.systemVoltageV ?? facts.batteries?.find(b => b.voltageV !== undefined)?.voltageV;
  const voltageV = nominalVoltage(told === undefined ? undefined : Math.max(12, told), chemistry);
  const use = {
    ...useOf(facts, voltageV, setting.mainsV, setting.at),
    doAllRunOn: durationH <= 12,
    isOfDay: durationH >= 24,
  };
  const assumptions = [
    ...bankAssumptions(
      { chemistry, isChemistryAssumed },
      facts.depthOfDischargePercent,
      batteryAir(facts, setting.at, setting.parsed.recognised.words),
    ),
    ...useAssumptions(use),
  ];
  let likely: { day: Day; needAh: number } | undefined;
  const explored = explore<'batteryCapacity' | 'dailyUse'>(
    assumptions,
    'batteryCapacity',
    (values, trace) => {
      const day = dayOf(use, values, trace);
      const needAh = chargeOver(day, durationH, trace);
      if (trace) likely = { day, needAh };
      const at = { needAh, chemistry, currentA: day.currentA, temperatureC: facts.ambientC };
      return { batteryCapacity: requiredCapacityAh(at, values, trace), dailyUse: day.dailyUse };
    },
  );
  const next = nextUsualSize(explored.figures.batteryCapacity.value, chemistry);
  const bank = { capacityAh: next.count * next.sizeAh, voltageV, chemistry, isChemistryAssumed };
  const { dischargeA } = limitsOf({ ...bank, isMixed: false, count: next.count });
  const { day, needAh } = present(likely);
  const longLifeAh =
    chemistry === 'lfp'
      ? undefined
      : run(capacityOfDepths, {
          Q: needAh,
          Q_day: day.dailyUse,
          d_max: present(assumptions[0]).value,
          d_day: dailyDepth.leadAcid,
          d_end: dailyDepth.endOfLife,
        });
  return { explored, longLifeAh, chemistry, voltageV, next, needAh, peakA: day.peakA, limitA: dischargeA };
}

/**
 * The loads of one night ("a fan and a router, 10 h overnight"): those without hours share the night's.
 * Undefined where the talk isn't of a night alone, or something runs beyond it.
 */
function nightly(facts: Facts, setting: RequestContext): readonly Load[] | undefined {
  const { durationH, loads = [] } = facts;
  const hours = Math.max(0, ...loads.map(load => load.hoursPerDay ?? 0));
  const isNight = durationH === undefined && setting.parsed.cues.has('night') && hours > 0 && hours <= nightH;
  if (!isNight || loads.some(load => cools(load.name) || isWhole(load))) return undefined;
  return loads.map(load => (hasHours(load) ? load : { ...load, hoursPerDay: hours }));
}

/** The smallest capacity (Ah on the label) that carries the loads for the time with nothing coming in. */
export function computeBatterySize(told: Facts, setting: RequestContext): BatterySize {
  const night = nightly(told, setting);
  const facts = night ? { ...told, loads: [...night] } : told;
  const durationH = told.durationH ?? (night ? 1 : autonomyDays) * 24;
  const chemistry = facts.batteries?.find(b => b.role !== 'starter' && b.chemistry !== undefined)?.chemistry;
  // "What size lithium" isn't about the AGM there is.
  const isOther = setting.recalled.has('batteries') && !!setting.parsed.facts.batteries?.length;
  const sized = sizeIn(chemistry ?? 'agm', chemistry === undefined, facts, setting, durationH);
  return {
    ...sized,
    isChemistryAssumed: chemistry === undefined,
    durationH,
    isDurationAssumed: facts.durationH === undefined,
    other: chemistry === undefined ? sizeIn('lfp', false, facts, setting, durationH) : undefined,
    ownAh: isOther ? undefined : facts.batteries && bankOf(facts.batteries)?.capacityAh,
  };
}

/** Volts under a load that an inverter's draw is worked out at, V. */
const inverterV = 12;
/** More blocks than this nobody puts side by side. Common practice. */
const mostBlocks = 6;

/** The smallest usual batteries that give what an inverter (W) takes flat out, and that current (A). */
export function batteriesFor(powerW: number): { amps: number; lithium?: Next; agm?: Next } {
  const amps = run(batteryCurrent, { P: powerW, eta: inverterEfficiency.value, V: inverterV });
  const smallest = (chemistry: Chemistry): Next | undefined => {
    const { usualSizesAh, nominalV: voltageV } = chemistryRow(chemistry);
    return Array.from({ length: mostBlocks }, (_, i) =>
      usualSizesAh.map(sizeAh => ({ count: i + 1, sizeAh })),
    )
      .flat()
      .sort((a, b) => a.count * a.sizeAh - b.count * b.sizeAh)
      .find(({ count, sizeAh }) => {
        const bank = { capacityAh: count * sizeAh, voltageV, chemistry, count };
        return fitsBank({ ...bank, isChemistryAssumed: false, isMixed: false }, amps).fit === 'yes';
      });
  };
  return { amps, lithium: smallest('lfp'), agm: smallest('agm') };
}
