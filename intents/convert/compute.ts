import { explore } from '#engine/explore.ts';
import { batteryCurrentA } from '#engine/inverter/check.ts';
import { currentAssumptions, throughWatts } from '#engine/inverter/watts.ts';
import { bridge, convertKind, type Kind, kinds } from '#engine/loads/convert.ts';
import type { Conversion } from '#language/reading.ts';
import { areaOfGauge, gaugeOfArea } from '#quantity/gauge.ts';
import { fromBase, toBase, unitOf } from '#quantity/quantity.ts';
import type { Range } from '#quantity/range.ts';
import type { Unit } from '#quantity/units.ts';
import { powerBankCellV } from '#rig/cell.ts';
import type { Load, Stated } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';
import type { RequestContext } from '../intent.ts';

/** Volts where none are told: the trade's 12 V. */
const tradeV = 12;
/** Watts of a metric and a mechanical horsepower differ by 1.4 %; the mechanical one. */
const horsepowerW = 745.7;

/** The unit that people want of another, where they name none. */
const usualTarget: Readonly<Record<string, string>> = {
  A: 'W',
  mA: 'A',
  W: 'A',
  kW: 'A',
  Ah: 'Wh',
  Wh: 'Ah',
  kWh: 'Ah',
  mAh: 'Wh',
  hp: 'W',
  AWG: 'mm²',
  'mm²': 'AWG',
  ft: 'm',
  m: 'ft',
  in: 'mm',
  mm: 'in',
  cm: 'in',
  yd: 'm',
  km: 'mi',
  mi: 'km',
  '°C': '°F',
  '°F': '°C',
  min: 'h',
  h: 'min',
  days: 'h',
  weeks: 'days',
};

export interface Converted {
  readonly value: number;
  readonly unit: string;
  /** Volts that bridged the two, and whether they were taken for granted. */
  readonly voltageV?: number;
  readonly isVoltageAssumed?: boolean;
  /** It was told at a power bank's cell. */
  readonly isAtCell?: true;
  /** Hours that bridged the two; one where none were told. */
  readonly hours?: number;
  readonly isHourAssumed?: boolean;
  readonly trace: Trace;
}

const horsepower: Unit = { symbol: 'hp', dimension: 'power', factor: horsepowerW, spellings: ['hp'] };
const find = (symbol: string): Unit | undefined =>
  symbol.toLowerCase() === 'hp' ? horsepower : unitOf(symbol);
const kindOf = ({ dimension }: Unit): Kind | undefined => kinds.find(kind => kind === dimension);

function target(conversion: Conversion, from: Unit): string | undefined {
  if (conversion.to !== undefined) return conversion.to;
  const isPower = from.dimension === 'power' || from.dimension === 'current';
  if (isPower && conversion.hours !== undefined)
    return from.dimension === 'power' && !conversion.voltageV ? 'Wh' : 'Ah';
  return usualTarget[from.symbol];
}

function electrical(conversion: Conversion, from: Unit, to: Unit, kind: Kind, wanted: Kind): Converted {
  const trace = new Trace();
  const needs = bridge(kind, wanted);
  // A power bank's mAh are told at its cell, not at 12 V.
  const voltageV =
    conversion.voltageV ?? (from.symbol === 'mAh' || to.symbol === 'mAh' ? powerBankCellV : tradeV);
  const hours = conversion.hours ?? 1;
  const base = convertKind(
    { value: toBase(conversion.value, from), from: kind, to: wanted, voltageV, hours },
    trace,
  );
  return {
    value: fromBase(base, to),
    unit: to.symbol,
    ...(needs.volts && { voltageV, isVoltageAssumed: conversion.voltageV === undefined }),
    ...(needs.hours && { hours, isHourAssumed: conversion.hours === undefined }),
    trace,
  };
}

/** A wire's gauge as its copper, or an area as the nearest gauge. "6 mm" of cable is read as mm². */
function wire(value: number, from: Unit, to: Unit): Converted | undefined {
  const trace = new Trace();
  const isArea = from.dimension === 'area' || from.symbol === 'mm';
  if (from.dimension === 'gauge' && to.dimension === 'area')
    return { value: areaOfGauge(value), unit: to.symbol, trace };
  // "8 gauge in millimetres squared" is read as mm.
  if (from.dimension === 'gauge' && to.symbol === 'mm')
    return { value: areaOfGauge(value), unit: 'mm²', trace };
  if (!isArea || to.dimension !== 'gauge' || value <= 0) return undefined;
  return { value: Math.round(gaugeOfArea(value)), unit: to.symbol, trace };
}

/** One quantity in another unit; undefined where no rule leads from one to the other. */
export function computeConversion(conversion: Conversion | undefined): Converted | undefined {
  const from = conversion && find(conversion.unit);
  const to = from && find(target(conversion, from) ?? '');
  if (!conversion || !from || !to) return undefined;
  // A power bank's amp hours are told at its cell: at 12 V they are as many fewer.
  const atV = from.symbol === 'mAh' && to.symbol === 'Ah' ? conversion.voltageV : undefined;
  if (atV !== undefined && atV > powerBankCellV) {
    const ah = (toBase(conversion.value, from) * powerBankCellV) / atV;
    return { value: ah, unit: to.symbol, voltageV: atV, isAtCell: true, trace: new Trace() };
  }
  const [kind, wanted] = [kindOf(from), kindOf(to)];
  if (kind && wanted && kind !== wanted) return electrical(conversion, from, to, kind, wanted);
  if (from.dimension !== to.dimension) return wire(conversion.value, from, to);
  if (from.dimension === 'other') return undefined;
  return { value: fromBase(toBase(conversion.value, from), to), unit: to.symbol, trace: new Trace() };
}

/** Of several batteries alike ("2 x 105Ah in kWh") all, joined in parallel at their volts, and not the one told. */
export function wholeOf(conversion: Conversion | undefined, { batteries }: Stated): Conversion | undefined {
  const [one, other] = batteries ?? [];
  const count = one && !other && one.capacityAh === conversion?.value ? (one.count ?? 1) : 1;
  return conversion && count > 1 ? { ...conversion, value: count * conversion.value } : conversion;
}

/** Above this, V, the amps asked for are those of the mains, not a battery's. */
const mostBatteryV = 60;

/** What a thing for mains takes from a battery: more than watts through volts, by the inverter's loss. */
export interface ThroughInverter {
  readonly currentA: Range;
  /** Its label, and what it takes from the inverter, W: a microwave's tells what it cooks with. */
  readonly labelW: number;
  readonly inputW: number;
}

/** The battery's amps for the one mains thing whose watts are turned into amps at a battery's volts; undefined for all else. */
export function throughInverter(
  result: Converted,
  { parsed: { conversion, facts }, mainsV = 230 }: Pick<RequestContext, 'parsed' | 'mainsV'>,
): ThroughInverter | undefined {
  const [told, other] = facts.loads?.filter(one => one.supply === 'ac' && one.powerW !== undefined) ?? [];
  const isAmps = result.unit === 'A' && (conversion?.unit === 'W' || conversion?.unit === 'kW');
  const { voltageV = tradeV } = result;
  if (!told || other || !isAmps || voltageV > mostBatteryV) return undefined;
  const load: Load = { ...told, count: told.count ?? 1, supply: 'ac' };
  const outlet = { loads: [load], mainsV };
  const assumptions = currentAssumptions(outlet, voltageV, undefined);
  const { batteryCurrent, acLoad } = explore<'batteryCurrent' | 'acLoad'>(
    assumptions,
    'batteryCurrent',
    (values, trace) => {
      const input = throughWatts(outlet, values, trace);
      return { acLoad: input, batteryCurrent: batteryCurrentA(input, undefined, values, trace) };
    },
  ).figures;
  return { currentA: batteryCurrent, labelW: (load.powerW ?? 0) * load.count, inputW: acLoad.value };
}

/** The numbers that a conversion goes by, in the base units that facts have: what is converted, and what bridges the two. */
export function numbersOf(conversion: Conversion): number[] {
  const from = find(conversion.unit);
  const result = computeConversion(conversion);
  const { value } = conversion;
  return [from ? toBase(value, from) : value, result?.voltageV, result?.hours].filter(
    number => number !== undefined,
  );
}
