import { present } from '#basics/present.ts';
import { batteryFuses, branchA, panelFuse } from '#engine/cable/fuse-kinds.ts';
import { bankShortCircuit, carriedCurrent, heatShare, panelShortCircuit } from '#engine/cable/pair-rules.ts';
import { bundleShareOf } from '#engine/cable/surroundings.ts';
import { brightSunFactor, shortAgainstFull, tableAirC } from '#engine/cable/tables.ts';
import { run } from '#rule/rule.ts';
import { cells, type Row, row } from './row.ts';

const exact = 1e-9;
const abyc = 'ABYC E-11, from memory';

const bundles: readonly Row[] = [
  ...cells(`${abyc}: wires that carry current in one bundle, share that each keeps`, 'memory', [
    ['abyc-bundle.2', 1, exact, () => bundleShareOf(2)],
    ['abyc-bundle.3', 0.7, exact, () => bundleShareOf(3)],
    ['abyc-bundle.4', 0.6, exact, () => bundleShareOf(4)],
    ['abyc-bundle.6', 0.6, exact, () => bundleShareOf(6)],
    ['abyc-bundle.7', 0.5, exact, () => bundleShareOf(7)],
    ['abyc-bundle.24', 0.5, exact, () => bundleShareOf(24)],
    ['abyc-bundle.25', 0.4, exact, () => bundleShareOf(25)],
  ]),
  row('abyc-bundle.air', `${abyc}: its currents are for air of 30 °C`, 'memory', 30, exact, () => tableAirC),
  ...cells(
    'NEC table 310.15(B)(1), from memory: share of a 75 and a 90 °C wire’s current left, of 30 °C',
    'memory',
    (
      [
        [75, 40, 0.88],
        [75, 50, 0.75],
        [75, 60, 0.58],
        [90, 40, 0.91],
        [90, 50, 0.82],
        [90, 60, 0.71],
      ] as const
    ).map(([T_i, T_a, share]) => [
      `nec-310.${T_i}.${T_a}`,
      share,
      0.006,
      () => run(heatShare, { T_i, T_a, T_0: tableAirC }),
    ]),
  ),
];

const panels: readonly Row[] = [
  ...cells(
    'data sheets of crystalline panels: 5 to 9 % more current when short than at full power',
    'memory',
    [['trade-short-current', 1.07, 0.02, () => shortAgainstFull]],
  ),
  ...cells('NEC 690.8(A)(1), from memory', 'memory', [['nec-690.8', 1.25, exact, () => brightSunFactor]]),
  row(
    'D-pair.short',
    'definition, on paper: 180 W in pairs of 22.5 V, four fifths of it at full power, a tenth more when short',
    'recomputed',
    5.5,
    exact,
    () => run(panelShortCircuit, { k_sc: 1.1, P: 180, n_s: 2, k_mp: 0.8, V_oc: 22.5 }),
  ),
];

/** Highest voltage and breaking capacity by the kind's name and place: V, A. */
const kinds: readonly (readonly [name: string, mostV: number, breaksA: number])[] = [
  ['blade', 32, 1000],
  ['small bolt-down', 32, 1000],
  ['large bolt-down', 32, 2000],
  ['bolt-down strip', 32, 6000],
  ['high-breaking, class T style', 125, 20_000],
];
const kindOf = (name: string) => present(batteryFuses.find(kind => kind.name === name));

const fuses: readonly Row[] = [
  ...kinds.flatMap(([name, mostV, breaksA]) =>
    cells(`common practice, fuse sheets: volts and breaking capacity of a ${name} fuse`, 'memory', [
      [`trade-fuse.${name}.volts`, mostV, exact, () => kindOf(name).mostV],
      [`trade-fuse.${name}.breaks`, breaksA, exact, () => kindOf(name).breaksA],
    ]),
  ),
  ...cells('common practice: fuses for strings of panels are marked for 1,000 V', 'memory', [
    ['trade-fuse.panel', 1000, exact, () => panelFuse.mostV],
  ]),
  ...cells('ISO 8820-3, from memory: blade fuses go up to 40 A', 'memory', [
    ['iso-8820-3.most', 40, exact, () => branchA],
    ['iso-8820-3.to', 40, exact, () => kindOf('blade').toA],
  ]),
  ...cells('definition, on paper', 'recomputed', [
    ['D-pair.bank', 4000, 1e-6, () => run(bankShortCircuit, { V_b: 12.8, R_i: 0.0032 })],
    ['D-pair.carried', 42, exact, () => run(carriedCurrent, { I_z: 100, k_T: 0.6, k_b: 0.7 })],
  ]),
];

export const rows: readonly Row[] = [...bundles, ...panels, ...fuses];
