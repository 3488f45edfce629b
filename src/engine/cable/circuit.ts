import { present } from '#basics/present.ts';
import { unhandled } from '#basics/unhandled.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Charger, Facts, Load } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { dcdcInputA } from '../charging/charge.ts';
import { dcdc, usualChargerA } from '../charging/tables.ts';
import { taken } from '../explore.ts';
import { batteryCurrentA, loadedVoltage } from '../inverter/check.ts';
import { inverterEfficiency } from '../inverter/efficiency.ts';
import { runningCurrentA, type Use, useAssumptions } from '../loads/model.ts';
import { currentOfPower } from '../loads/rules.ts';
import { panelCurrents, panelLeadAssumptions } from './panels.ts';
import type { CircuitUse } from './tables.ts';

/** What hangs on a cable or behind a fuse. */
export type CircuitKind = 'told' | 'inverter' | 'loads' | 'dcdc' | 'charger' | 'solar';

/** A circuit as far as cable and fuse care. */
export interface Circuit {
  readonly kind: CircuitKind;
  readonly use: CircuitUse;
  /** "the fridge", "a 2000 W inverter". */
  readonly facts: Facts;
  /** Nominal, V: 12 or 24. */
  readonly voltageV: number;
  readonly mainsV?: number;
}

/** The facts of each kind, in the order in which they are taken; of what memory filled in only what is spoken of. */
const holders: readonly (readonly [kind: CircuitKind, key: keyof Facts, has: (facts: Facts) => boolean])[] = [
  ['told', 'cable', f => f.cable?.currentA !== undefined],
  ['inverter', 'inverter', f => f.inverter?.powerW !== undefined],
  ['loads', 'loads', f => !!f.loads?.length],
  ['dcdc', 'chargers', f => !!f.chargers?.some(c => c.kind === 'dcdc')],
  ['charger', 'chargers', f => !!f.chargers?.some(c => c.kind !== 'generator')],
  ['solar', 'solar', f => !!f.solar?.some(s => s.powerW !== undefined)],
];

/** Which circuit is meant, or none: what was said before what is remembered. */
export function circuitKindOf(facts: Facts, recalled: ReadonlySet<keyof Facts>): CircuitKind | undefined {
  const held = holders.filter(([, , has]) => has(facts));
  return (held.find(([, key]) => !recalled.has(key)) ?? held[0])?.[0];
}

const lampNames = /\b(light|lamp|led)/;
/** Whether it cools by 12 V: its compressor starts badly, and it cuts out early, on volts lost on the way. */
const cools = ({ name }: Load): boolean => applianceOf(name)?.setPointC !== undefined;

/** How much drop a circuit stands: charging, inverters and what cools or cuts out early little, lamps more. */
export function circuitUseOf(kind: CircuitKind, facts: Facts): CircuitUse {
  if (kind === 'inverter' || kind === 'dcdc' || kind === 'charger' || kind === 'solar') return 'critical';
  const isCharging = !!facts.chargers?.length;
  if (kind === 'told' && isCharging) return 'critical';
  const { loads } = facts;
  if (loads?.some(cools)) return 'critical';
  return loads?.length && loads.every(load => lampNames.test(load.name)) ? 'lamps' : 'general';
}

const useOf = ({ facts, voltageV, mainsV }: Circuit): Use => ({
  loads: present(facts.loads, 'the loads of the circuit'),
  voltageV,
  mainsV,
  inverterW: facts.inverter?.powerW,
});

const toldA = ({ facts }: Circuit): number => present(facts.cable?.currentA, 'the current that was told');
const panelsOf = ({ facts }: Circuit) => present(facts.solar, 'the panels of the circuit');

const isDcdcTold = ({ kind, facts: { cable, chargers } }: Circuit): boolean =>
  kind === 'told' &&
  !!chargers?.some(c => c.kind === 'dcdc' && (c.currentA ?? cable?.currentA) === cable?.currentA);

/** What a DC-DC charger takes in hangs on its efficiency and the vehicle's voltage. */
const dcdcAssumptions: readonly Assumption[] = [
  {
    name: 'dcdcEfficiency',
    value: dcdc.efficiency[0],
    low: dcdc.efficiency[1],
    high: dcdc.efficiency[2],
    unit: '',
    why: 'a usual DC-DC charger',
  },
  {
    name: 'vehicleVoltage',
    value: dcdc.inV[0],
    low: dcdc.inV[1],
    high: dcdc.inV[2],
    unit: 'V',
    why: 'with the engine running',
  },
];
const inputA = (outA: number, values: Values, trace?: Trace): number =>
  dcdcInputA(outA, trace, { eta: values.dcdcEfficiency, V_i: values.vehicleVoltage });

const chargerOf = (circuit: Circuit) => {
  const isOurs = ({ kind }: Charger) => (circuit.kind === 'dcdc' ? kind === 'dcdc' : kind !== 'generator');
  return present(circuit.facts.chargers?.find(isOurs), 'the charger of the circuit');
};

/** What is taken for granted to know the current: typical draws, an inverter's efficiency, a charger's rating. */
export function circuitAssumptions(circuit: Circuit): Assumption[] {
  switch (circuit.kind) {
    case 'inverter':
      return [inverterEfficiency, loadedVoltage(circuit.voltageV, undefined)];
    case 'loads':
      return useAssumptions(useOf(circuit)).filter(
        a => / (power|input factor)$/.test(a.name) || a.name === inverterEfficiency.name,
      );
    case 'dcdc':
    case 'charger': {
      const charger = chargerOf(circuit);
      const own = circuit.kind === 'dcdc' ? dcdcAssumptions : [];
      if (charger.currentA !== undefined || charger.powerW !== undefined) return [...own];
      const { range, why } = usualChargerA[charger.kind];
      const [value, low, high] = range;
      return [...own, { name: 'chargerCurrent', value, low, high, unit: 'A', why }];
    }
    case 'solar':
      return panelLeadAssumptions(panelsOf(circuit).filter(panel => panel.powerW !== undefined));
    case 'told':
      return isDcdcTold(circuit) ? [...dcdcAssumptions] : [];
    default:
      return unhandled(circuit.kind);
  }
}

/** Currents of a circuit, A. */
export interface Currents {
  /** As its label has it: of a DC-DC charger what it gives. */
  readonly ratedA: number;
  /** What flows in the cable, that the drop is reckoned at: of a DC-DC charger what it takes in. */
  readonly cableA: number;
  /** The highest that flows for long, which cable and fuse must stand. */
  readonly continuousA: number;
  /** What the drop is a share of, V: nominal, or the vehicle's volts before a DC-DC charger. */
  readonly ofV: number;
}

/**
 * What the glow plug of a fuel heater draws for some minutes as it starts, A at 12 V: its installation sheets ask for a
 * cable and a fuse for that, not for the fan that runs all night. Common practice.
 */
const glowPlugA = 10;

/** Whether a thing draws far more than it runs at for minutes, each time that it starts. */
export const startsForMinutes = (load: Pick<Load, 'name'>): boolean =>
  applianceOf(load.name)?.id === 'diesel heater';

/** Currents of a circuit (A). Takes the assumptions of `circuitAssumptions`. */
export function circuitCurrents(circuit: Circuit, values: Values, trace?: Trace): Currents {
  const { facts, voltageV } = circuit;
  const same = (ratedA: number): Currents => ({
    ratedA,
    cableA: ratedA,
    continuousA: ratedA,
    ofV: voltageV,
  });
  const ofPower = (P: number): number => run(currentOfPower, { P, V: voltageV }, trace);
  const before = (ratedA: number): Currents => {
    const takesA = inputA(ratedA, values, trace);
    return { ratedA, cableA: takesA, continuousA: takesA, ofV: taken(values, 'vehicleVoltage') };
  };
  switch (circuit.kind) {
    case 'told': {
      const ratedA = toldA(circuit);
      return isDcdcTold(circuit) ? before(ratedA) : same(ratedA);
    }
    case 'inverter': {
      const powerW = present(facts.inverter?.powerW, 'the watts of the inverter');
      return same(batteryCurrentA(powerW, powerW, values, trace));
    }
    case 'loads': {
      const use = useOf(circuit);
      const each = use.loads.map(load => {
        const runsA = runningCurrentA(load, use, values, trace);
        return load.count * (startsForMinutes(load) ? Math.max(runsA, (glowPlugA * 12) / voltageV) : runsA);
      });
      return same(each.reduce((sum, a) => sum + a, 0));
    }
    case 'dcdc':
    case 'charger': {
      const { currentA, powerW } = chargerOf(circuit);
      const ratedA = currentA ?? (powerW === undefined ? present(values.chargerCurrent) : ofPower(powerW));
      return circuit.kind === 'dcdc' ? before(ratedA) : same(ratedA);
    }
    case 'solar': {
      const { fullA, continuousA } = panelCurrents(panelsOf(circuit), voltageV, values, trace);
      return { ratedA: fullA, cableA: fullA, continuousA, ofV: voltageV };
    }
    default:
      return unhandled(circuit.kind);
  }
}

/** What panels give the battery behind their controller, A at its nominal volts: the fuse there is another than theirs. */
export const behindController = (circuit: Circuit, trace?: Trace): number =>
  run(
    currentOfPower,
    { P: panelsOf(circuit).reduce((sum, s) => sum + s.count * (s.powerW ?? 0), 0), V: circuit.voltageV },
    trace,
  );

/** Whether a motor starts on it, which a fuse must stand for a moment. */
export const hasMotor = (facts: Facts): boolean =>
  !!facts.loads?.some(load => (applianceOf(load.name)?.surge ?? 1) > 1);
