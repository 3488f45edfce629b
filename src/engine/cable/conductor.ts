import { present } from '#basics/present.ts';
import { ampacity } from '#catalog/ampacity.ts';
import { areaOfGauge, gaugeOfArea } from '#quantity/gauge.ts';
import type { Cable } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import { ampacityBetween, conductorResistance, strandArea, warmResistance } from './rules.ts';
import { autoCable, copperCoefficient, copperResistivity, gauges, layFactor, sizes } from './tables.ts';

/** A conductor: its copper, and how its size is written. */
export interface Conductor {
  readonly areaMm2: number;
  readonly as: 'metric' | 'gauge' | 'auto';
  /** Trade size where it is auto cable, mm; the gauge where it is one. */
  readonly size: number;
}

const nearestAuto = (tradeMm: number) =>
  autoCable.reduce((a, b) => (Math.abs(b.tradeMm - tradeMm) < Math.abs(a.tradeMm - tradeMm) ? b : a));

/** Copper (mm²) of Australian auto cable by its trade size, mm; between and beyond the sizes sold by the square. */
export function autoCableAreaMm2(tradeMm: number, trace?: Trace): number {
  const nearest = nearestAuto(tradeMm);
  const isListed = Math.abs(nearest.tradeMm - tradeMm) < 0.3;
  const S = run(strandArea, { n: nearest.strands, d: nearest.strandMm }, isListed ? trace : undefined);
  return isListed ? S : S * (tradeMm / nearest.tradeMm) ** 2;
}

/** The conductor that was told, if any: auto cable before mm² before gauge. */
export function conductorOf(cable: Cable | undefined, trace?: Trace): Conductor | undefined {
  if (cable?.autoCableMm !== undefined)
    return {
      areaMm2: autoCableAreaMm2(cable.autoCableMm, trace),
      as: 'auto',
      size: cable.autoCableMm,
    };
  if (cable?.areaMm2 !== undefined) return { areaMm2: cable.areaMm2, as: 'metric', size: cable.areaMm2 };
  if (cable?.awg !== undefined) return gaugeConductor(cable.awg);
  return undefined;
}

const gaugeConductor = (awg: number): Conductor => ({ areaMm2: areaOfGauge(awg), as: 'gauge', size: awg });

/** The sizes that are sold, thin to thick, as mm² or as gauges. */
export const conductorsSold = (as: 'metric' | 'gauge'): readonly Conductor[] =>
  as === 'gauge'
    ? gauges.map(gaugeConductor)
    : sizes.map(({ areaMm2 }) => ({ areaMm2, as: 'metric', size: areaMm2 }));

const rowOf = (conductor: Conductor) =>
  conductor.as === 'metric' ? sizes.find(row => row.areaMm2 === conductor.areaMm2) : undefined;

/** Warmth of the copper under load, °C; in hot air, as told, it is hotter still. */
function copperWarmth(airC: number | undefined): Assumption {
  const value = Math.max(35, (airC ?? 0) + 10);
  return {
    name: 'conductorC',
    value,
    low: Math.min(value, Math.max(20, airC ?? 0)),
    high: Math.max(60, value + 15),
    unit: '°C',
    why: 'the copper, in a warm vehicle under load',
  };
}

/** What is taken for granted of a conductor: how warm it is (with the air around it, °C, where told), and how its strands lie. */
export function conductorAssumptions(conductor: Conductor | undefined, airC?: number): Assumption[] {
  const row = conductor && rowOf(conductor);
  const isMetric = conductor === undefined || row !== undefined;
  // ISO 6722 allows road-vehicle cable a few per cent less than IEC 60228 class 5 allows flexible cable.
  const vehicle = row?.vehicle === undefined ? 0.94 : Math.min(1, row.vehicle / row.flexible);
  return [
    copperWarmth(airC),
    isMetric
      ? {
          name: 'strandFactor',
          value: 1,
          low: vehicle,
          high: 1.03,
          unit: '',
          why: 'resistance as in IEC 60228 class 5',
        }
      : {
          name: 'strandFactor',
          ...layFactor,
          unit: '',
          why: 'strands against solid copper, by IEC 60228 class 5',
        },
  ];
}

/** Resistance of a metre (Ω/m), warm: from the table where the size is a standard one, else from its copper. */
export function resistancePerM(conductor: Conductor, values: Values, trace?: Trace): number {
  const row = rowOf(conductor);
  const k_l = taken(values, 'strandFactor');
  const r_20 = row
    ? (row.flexible * k_l) / 1000
    : run(conductorResistance, { rho: copperResistivity, k_l, S: conductor.areaMm2 }, trace);
  if (row)
    trace?.lookup({
      name: 'conductorResistance',
      says: `resistance of a metre of ${row.areaMm2} mm² flexible copper at 20 °C`,
      value: r_20 * 1000,
      unit: 'mΩ/m',
      source: 'IEC 60228 class 5',
    });
  const T = taken(values, 'conductorC');
  return run(warmResistance, { r_20, alpha: copperCoefficient, T, T_20: 20 }, trace);
}

interface AmpacityRow {
  readonly S: number;
  readonly I: number;
}
type Insulation = 75 | 105;
const rowsMade: Partial<Record<Insulation, readonly AmpacityRow[]>> = {};

/** ABYC's table by area; a choice of cable looks it up for every size that is sold. */
const rowsFor = (insulation: Insulation): readonly AmpacityRow[] =>
  (rowsMade[insulation] ??= ampacity.map(row => ({
    S: areaOfGauge(row[0]),
    I: row[insulation === 75 ? 2 : 1],
  })));

/** Current (A) a conductor may carry: ABYC's table by gauge, between its gauges along a power law. */
export function ampacityA(areaMm2: number, insulation: Insulation = 75, trace?: Trace): number {
  const rows = rowsFor(insulation);
  const above = rows.findIndex(row => row.S >= areaMm2 * 0.9999);
  const second = above < 0 ? rows.length - 1 : Math.max(1, above);
  const [a, b] = [present(rows[second - 1]), present(rows[second])];
  return run(ampacityBetween, { I_1: a.I, S: areaMm2, S_1: a.S, I_2: b.I, S_2: b.S }, trace);
}

/** Share of its copper's current that auto cable is sold for: thin insulation on small sizes stands less. 1 for the rest. */
export function autoShare({ as, size }: Conductor): number {
  const { soldForA, tradeMm } = nearestAuto(size);
  if (as !== 'auto' || soldForA === undefined) return 1;
  return Math.min(1, soldForA / ampacityA(autoCableAreaMm2(tradeMm)));
}

/** The gauge (AWG = B&S) with at least this much copper, mm². */
export const gaugeFor = (areaMm2: number): number =>
  gauges.find(gauge => areaOfGauge(gauge) >= areaMm2 * 0.97) ?? Math.floor(gaugeOfArea(areaMm2));

/** The gauge whose copper is nearest to an area, mm². */
export const nearestGauge = (areaMm2: number): number => Math.round(gaugeOfArea(areaMm2));
