import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values } from '../assumption.ts';
import { meanChargeV } from '../battery/round-trip.ts';
import { taken } from '../explore.ts';
import { dayTemperature } from './air.ts';
import type { SolarCase } from './case.ts';
import { fullPowerVolts, stringFullPowerV } from './module.ts';
import { cellTemperature, mpptFactor, panelLosses, pwmFactor, temperatureFactor } from './rules.ts';
import { mountHeating, shadeShare } from './tables.ts';

const losses: readonly Assumption[] = [
  { name: 'dirtLoss', value: 0.05, low: 0.02, high: 0.1, unit: '', why: 'dust and droppings on tour' },
  { name: 'wiringLoss', value: 0.03, low: 0.01, high: 0.05, unit: '', why: 'cables within the usual drop' },
  {
    name: 'mismatchLoss',
    value: 0.05,
    low: 0.02,
    high: 0.08,
    unit: '',
    why: 'rating tolerance, ageing, mismatch',
  },
  { name: 'reflectionLoss', value: 0.04, low: 0.02, high: 0.06, unit: '', why: 'glancing and weak light' },
];

const powerCoefficient: Assumption = {
  name: 'powerCoefficient',
  value: -0.0041,
  low: -0.0047,
  high: -0.0035,
  unit: '1/K',
  why: 'crystalline silicon, PVWatts manual table 2',
};

/** Under cloud cells make less of each sun hour: a few in a hundred at a fifth of full sun. Data sheets of crystalline panels, from memory. */
const lowLight: Assumption = {
  name: 'reflectionLoss',
  value: 0.08,
  low: 0.04,
  high: 0.12,
  unit: '',
  why: 'weak light under cloud',
};

const lossesOf = ({ sky }: SolarCase): readonly Assumption[] =>
  sky === 'overcast' ? losses.map(a => (a.name === lowLight.name ? lowLight : a)) : losses;

/** What is taken for granted of the panel and its place in the weather. */
export function panelAssumptions(c: SolarCase): Assumption[] {
  const heating = mountHeating[c.mount ?? 'flat'];
  const heat: Assumption[] = [
    { name: 'mountHeating', ...heating, unit: 'K·m²/kW' },
    powerCoefficient,
    ...(c.ambientC === undefined ? [dayTemperature(c)] : []),
  ];
  const shade: Assumption[] =
    c.shade && c.shade !== 'none' ? [{ name: 'shadeShare', ...shadeShare[c.shade], unit: '' }] : [];
  return [...heat, ...lossesOf(c), ...shade, ...(c.learned ? [c.learned] : [])];
}

/** What is taken for granted of the controller. */
export function controllerAssumptions(c: SolarCase): Assumption[] {
  const { controller } = c;
  const why = controller
    ? `${controller.toUpperCase()}, common practice`
    : 'as you named none; PWM gives about a fifth less';
  const efficiency: Assumption = {
    name: 'controllerEfficiency',
    value: 0.95,
    low: controller ? 0.92 : 0.75,
    high: 0.98,
    unit: '',
    why,
  };
  if (controller !== 'pwm') return [efficiency];
  const [value, low, high] = meanChargeV(c.chemistry ?? 'agm', 'sun');
  return [
    {
      name: 'chargingVoltage',
      value,
      low,
      high,
      unit: 'V',
      why: 'battery on charge, half full to nearly full; of each 12 V',
    },
    fullPowerVolts(c),
    efficiency,
  ];
}

/**
 * Share of the panel's rating × sun hours that arrives at the battery.
 * @param G how strong the sun is while the energy comes in, kW/m²
 */
export function systemFactor(c: SolarCase, G: number, values: Values, trace?: Trace): number {
  const v = (name: AssumptionName) => taken(values, name);
  const f_L = run(
    panelLosses,
    {
      L_dirt: v('dirtLoss'),
      L_wire: v('wiringLoss'),
      L_mismatch: v('mismatchLoss'),
      L_reflection: v('reflectionLoss'),
    },
    trace,
  );
  const k_shade = values.shadeShare ?? 1;
  const T_c = run(
    cellTemperature,
    { T_a: c.ambientC ?? v('dayTemperature'), k: v('mountHeating'), G },
    trace,
  );
  const f_T = run(temperatureFactor, { gamma: v('powerCoefficient'), T_c, T_0: 25 }, trace);
  if (c.controller === 'pwm') {
    const volts = { V_bat: (c.blocks ?? 1) * v('chargingVoltage'), V_mp: stringFullPowerV(c, values) };
    return run(pwmFactor, { ...volts, f_T, f_L, k_shade, eta: v('controllerEfficiency') }, trace);
  }
  return run(mpptFactor, { f_T, f_L, k_shade, eta: v('controllerEfficiency') }, trace);
}
