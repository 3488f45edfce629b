import { all, create, type MathNode, type MathType } from 'mathjs';
import { present } from '#basics/present.ts';

/** The judge: mathjs with its units. `predictable` gives NaN, not a complex number, for sqrt(-1). */
export const judge = create(present(all), { predictable: true });

export interface UnitOfRules {
  /** As mathjs writes it; '' for a pure number. Temperatures are counted in kelvin steps. */
  readonly mathjs: string;
  /** A span of values that a camper may meet, for the seeded inputs. */
  readonly span: readonly [low: number, high: number];
}

/** Every unit that a rule may use. A rule with a unit that is not here fails. */
export const unitsOfRules: Readonly<Record<string, UnitOfRules>> = {
  '': { mathjs: '', span: [0.05, 1.6] },
  '%': { mathjs: '', span: [1, 100] },
  A: { mathjs: 'A', span: [0.05, 200] },
  Ah: { mathjs: 'A h', span: [1, 600] },
  'A/V': { mathjs: 'A / V', span: [0.1, 100] },
  W: { mathjs: 'W', span: [1, 4000] },
  kW: { mathjs: 'kW', span: [0.1, 6] },
  Wh: { mathjs: 'W h', span: [10, 9000] },
  'Wh/kg': { mathjs: 'W h / kg', span: [25, 160] },
  L: { mathjs: 'L', span: [5, 400] },
  kg: { mathjs: 'kg', span: [0.1, 80] },
  V: { mathjs: 'V', span: [10, 60] },
  'V/A': { mathjs: 'V / A', span: [0.001, 0.1] },
  h: { mathjs: 'h', span: [0.2, 30] },
  '1/h': { mathjs: '1 / h', span: [0.05, 3] },
  days: { mathjs: 'day', span: [0.5, 14] },
  min: { mathjs: 'minute', span: [1, 300] },
  s: { mathjs: 's', span: [1, 300] },
  m: { mathjs: 'm', span: [0.2, 2000] },
  '1/m': { mathjs: '1 / m', span: [0.00001, 0.00003] },
  'm²': { mathjs: 'm^2', span: [0.2, 12] },
  mm: { mathjs: 'mm', span: [0.1, 20] },
  'mm²': { mathjs: 'mm^2', span: [0.5, 120] },
  '1/mm²': { mathjs: '1 / mm^2', span: [0.01, 2] },
  Ω: { mathjs: 'ohm', span: [0.0001, 1] },
  mΩ: { mathjs: 'mohm', span: [0.1, 100] },
  'Ω/m': { mathjs: 'ohm / m', span: [0.0001, 0.05] },
  'mΩ/m': { mathjs: 'mohm / m', span: [0.1, 50] },
  'Ω/km': { mathjs: 'ohm / km', span: [0.1, 50] },
  'Ω·mm²/m': { mathjs: 'ohm mm^2 / m', span: [0.017, 0.03] },
  'A/mm²': { mathjs: 'A / mm^2', span: [1, 15] },
  '°C': { mathjs: 'K', span: [-10, 60] },
  K: { mathjs: 'K', span: [1, 60] },
  '1/K': { mathjs: '1 / K', span: [-0.006, 0.006] },
  '%/K': { mathjs: '1 / K', span: [-0.6, 0.6] },
  'm³': { mathjs: 'm^3', span: [0.005, 0.4] },
  'W/(m·K)': { mathjs: 'W / (m K)', span: [0.02, 0.04] },
  'W/K': { mathjs: 'W / K', span: [0.2, 5] },
  'V/K': { mathjs: 'V / K', span: [-0.04, 0.04] },
  'W/m²': { mathjs: 'W / m^2', span: [50, 1100] },
  'kW/m²': { mathjs: 'kW / m^2', span: [0.05, 1.4] },
  'kWh/m²': { mathjs: 'kW h / m^2', span: [0.5, 12] },
  'K·m²/kW': { mathjs: 'K m^2 / kW', span: [10, 60] },
  'm/s': { mathjs: 'm / s', span: [0, 10] },
};

/** A number with its unit, as the judge knows it. */
export function withUnit(value: number, unit: string): MathType {
  const known = unitsOfRules[unit];
  if (!known) throw new Error(`"${unit}" is not in tests/rules/units.ts`);
  return known.mathjs ? judge.multiply(value, judge.unit(1, known.mathjs)) : value;
}

/** 3 Ah ÷ 2 Ah is the number 1.5; mathjs may keep it as a unit whose dimensions have gone. */
function pure(x: unknown): unknown {
  if (!judge.isUnit(x)) return x;
  const { dimensions, value } = x as unknown as { dimensions: number[]; value: number };
  return dimensions.every(d => Math.abs(d) < 1e-9) ? value : x;
}
judge.import({ pure });

/** A formula with units put in for its symbols, evaluated by mathjs. */
export function evaluateWithUnits(formula: string, scope: Readonly<Record<string, unknown>>): unknown {
  const wrap = (node: MathNode): MathNode => {
    const inner = node.map(wrap);
    return inner.type === 'OperatorNode' ? new judge.FunctionNode('pure', [inner]) : inner;
  };
  return wrap(judge.parse(formula)).evaluate({ ...scope });
}

/** The value of a result counted in a unit; throws where it is of another kind. */
export function countIn(result: unknown, unit: string): number {
  const known = unitsOfRules[unit];
  if (!known) throw new Error(`"${unit}" is not in tests/rules/units.ts`);
  if (known.mathjs === '') {
    if (typeof result === 'number') return result;
    if (typeof result === 'boolean') return Number(result);
    throw new Error(`gives ${String(result)}, not a pure number`);
  }
  if (!judge.isUnit(result)) throw new Error(`gives the pure number ${String(result)}, not ${unit}`);
  const ratio = pure(judge.divide(result, judge.unit(1, known.mathjs)));
  if (typeof ratio !== 'number') throw new Error(`gives ${String(result)}, which is not in ${unit}`);
  return ratio;
}
