import { applianceOf } from '#catalog/appliances.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargeAtRest } from '#engine/battery/rest.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { dropOn } from '#engine/cable/choose.ts';
import { type Circuit, circuitAssumptions, circuitCurrents } from '#engine/cable/circuit.ts';
import { conductorAssumptions, conductorOf } from '#engine/cable/conductor.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import type { Setting } from '../intent.ts';
import { hasUse, useOf } from '../use.ts';
import { signsIn } from './signs.ts';
import { type Symptom, symptoms } from './symptoms-table.ts';

export interface Fault {
  readonly symptom: Symptom;
  /** What the cable loses while the load runs. */
  readonly drop?: Explored<'voltageDrop' | 'current'>;
  /** Mains loads together against the inverter's rating. */
  readonly load?: { readonly explored: Explored<'acLoad'>; readonly ratingW: number };
  /** A day's use against what the battery gives. */
  readonly day?: Explored<'dailyUse' | 'usableCapacity'>;
  /** How full a battery is that reads so at rest, %. */
  readonly level?: Range;
}

/** The symptom that the words name, else the one that most of the facts point at. */
export function symptomOf(facts: Facts, named?: string): Symptom {
  const told = symptoms.find(({ name }) => name === named);
  if (told) return told;
  const signs = signsIn(facts, name => applianceOf(name)?.id);
  const fitting = symptoms.filter(({ when }) => when.every(sign => signs.has(sign)));
  // Where as many signs point at two, the table's order counts.
  return fitting.reduce((best, one) => (one.when.length > best.when.length ? one : best));
}

function dropOf(facts: Facts, mainsV: number): Fault['drop'] {
  const conductor = conductorOf(facts.cable);
  const lengthM = facts.cable?.lengthM;
  if (
    !conductor ||
    lengthM === undefined ||
    !(facts.cable?.currentA ?? facts.loads?.some(l => applianceOf(l.name)))
  )
    return undefined;
  const circuit: Circuit = {
    kind: facts.cable?.currentA === undefined ? 'loads' : 'told',
    use: 'general',
    facts,
    voltageV: (facts.systemVoltageV ?? 12) > 18 ? 24 : 12,
    mainsV,
  };
  const assumptions = [...conductorAssumptions(conductor), ...circuitAssumptions(circuit)];
  const oneWayM = facts.cable?.isRoundTrip ? lengthM / 2 : lengthM;
  return explore<'voltageDrop' | 'current'>(assumptions, 'voltageDrop', (values, trace) => {
    const { cableA, continuousA } = circuitCurrents(circuit, values, trace);
    const about = { lengthM: oneWayM, currentA: cableA, continuousA, voltageV: circuit.voltageV };
    return { voltageDrop: dropOn(conductor, about, values, trace).dropV, current: cableA };
  });
}

function loadOf(facts: Facts, mainsV: number): Fault['load'] {
  const loads = facts.loads?.filter(load => load.supply === 'ac') ?? [];
  const ratingW = facts.inverter?.powerW;
  const isKnown = loads.every(load => load.powerW ?? load.currentA ?? applianceOf(load.name));
  if (ratingW === undefined || loads.length === 0 || !isKnown) return undefined;
  const outlet = { loads, mainsV };
  const explored = explore<'acLoad'>(wattsAssumptions(outlet), 'acLoad', (values, trace) => ({
    acLoad: throughWatts(outlet, values, trace),
  }));
  return { explored, ratingW };
}

function dayOf(facts: Facts, mainsV: number): Fault['day'] {
  const bank = bankOf(facts.batteries ?? [], facts.arrangement, facts.systemVoltageV);
  if (!bank || !hasUse(facts)) return undefined;
  const use = useOf(facts, bank.voltageV, mainsV);
  return explore<'dailyUse' | 'usableCapacity'>(
    [...bankAssumptions(bank), ...useAssumptions(use)],
    'dailyUse',
    (values, trace) => ({
      dailyUse: dailyUseAh(use, values, trace),
      usableCapacity: usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace),
    }),
  );
}

function levelOf({ volts, voltsTaken, batteries }: Facts): Range | undefined {
  if (volts === undefined || voltsTaken !== 'rest') return undefined;
  return chargeAtRest(volts, batteries?.find(b => b.chemistry)?.chemistry ?? 'lead-acid');
}

/**
 * What is likely wrong, and what of it can be worked out. Gear that memory filled in and nobody spoke of is no sign
 * of a fault; it only helps to work out a figure.
 */
export function computeFault(
  facts: Facts,
  { mainsV, recalled, symptom: named }: Pick<Setting, 'mainsV' | 'recalled' | 'symptom'>,
): Fault {
  const told = Object.fromEntries(
    Object.entries(facts).filter(([key]) => !recalled.has(key as keyof Facts)),
  ) as Facts;
  const symptom = symptomOf(told, named);
  return {
    symptom,
    drop: dropOf(told, mainsV),
    load: symptom.weighs === 'load' ? loadOf(facts, mainsV) : undefined,
    day: symptom.weighs === 'day' ? dayOf(facts, mainsV) : undefined,
    level: levelOf(told),
  };
}
