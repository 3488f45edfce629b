import type { Assumption } from '#quantity/range.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { dayTemperature } from './air.ts';
import type { CompleteValues, SolarCase } from './case.ts';
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

/** What is taken for granted of the panel and its place in the weather. A PWM controller's yield doesn't depend on heat. */
export function panelAssumptions(c: SolarCase): Assumption[] {
  const heating = mountHeating[c.mount ?? 'flat'];
  const heat: Assumption[] = [
    { name: 'mountHeating', ...heating, unit: 'K·m²/kW' },
    powerCoefficient,
    ...(c.ambientC === undefined ? [dayTemperature(c)] : []),
  ];
  const shade =
    c.shade && c.shade !== 'none' ? [{ name: 'shadeShare', ...shadeShare[c.shade], unit: '' }] : [];
  return [...(c.controller === 'pwm' ? [] : heat), ...losses, ...shade];
}

/** What is taken for granted of the controller. */
export function controllerAssumptions(controller?: 'mppt' | 'pwm'): Assumption[] {
  if (controller === 'pwm')
    return [
      {
        name: 'chargingVoltage',
        value: 13.1,
        low: 12.5,
        high: 13.8,
        unit: 'V',
        why: 'battery on charge, half full to nearly full',
      },
      { name: 'panelVoltage', value: 18.1, low: 17, high: 19, unit: 'V', why: 'panel for 12 V, 36 cells' },
    ];
  const why = controller
    ? 'MPPT, common practice'
    : 'MPPT taken, as the controller was not said; PWM gives about a fifth less';
  return [
    { name: 'controllerEfficiency', value: 0.95, low: controller ? 0.92 : 0.75, high: 0.98, unit: '', why },
  ];
}

/**
 * Share of the panel's rating × sun hours that arrives at the battery.
 * @param G how strong the sun is while the energy comes in, kW/m²
 */
export function systemFactor(c: SolarCase, G: number, values: CompleteValues, trace?: Trace): number {
  const v = (name: string) => values[name] as number;
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
  if (c.controller === 'pwm')
    return run(pwmFactor, { V_bat: v('chargingVoltage'), V_mp: v('panelVoltage'), f_L, k_shade }, trace);
  const T_c = run(
    cellTemperature,
    { T_a: c.ambientC ?? v('dayTemperature'), k: v('mountHeating'), G },
    trace,
  );
  const f_T = run(temperatureFactor, { gamma: v('powerCoefficient'), T_c, T_0: 25 }, trace);
  return run(mpptFactor, { f_T, f_L, k_shade, eta: v('controllerEfficiency') }, trace);
}
