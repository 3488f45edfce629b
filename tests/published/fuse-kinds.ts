import { present } from '#basics/present.ts';
import {
  batteryFuses,
  type FuseKind,
  fullBlockV,
  panelFuse,
  shortMilliohm,
} from '#engine/cable/fuse-kinds.ts';
import { surroundingAssumptions } from '#engine/cable/surroundings.ts';
import { autoCable } from '#engine/cable/tables.ts';
import { cells, type Row } from './row.ts';

const exact = 1e-9;
const of = (name: string): FuseKind => present(batteryFuses.find(kind => kind.name === name));
const sheets = 'common practice, fuse sheets: ratings sold, A';

const kinds: readonly Row[] = [
  ...cells(
    'ISO 8820-5:2015, scope: bolt-in strip fuse-links of 30 A to 500 A, 32 V, breaking 2,000 A',
    'seen',
    [
      ['iso-8820-5.from', 30, exact, () => of('small bolt-down').fromA],
      ['iso-8820-5.to', 500, exact, () => of('large bolt-down').toA],
      ['iso-8820-5.volts', 32, exact, () => of('large bolt-down').mostV],
      ['iso-8820-5.breaks', 2000, exact, () => of('large bolt-down').breaksA],
    ],
  ),
  ...cells(
    'ABYC E-11 as the trade quotes it: a bank that may give more than 10 kA short wants a fuse that breaks 20 kA at 125 V',
    'seen',
    [
      ['abyc-fuse.breaks', 20_000, exact, () => of('high-breaking, class T style').breaksA],
      ['abyc-fuse.volts', 125, exact, () => of('high-breaking, class T style').mostV],
    ],
  ),
  ...cells(sheets, 'memory', [
    ['trade-fuse.blade.from', 1, exact, () => of('blade').fromA],
    ['trade-fuse.small.to', 200, exact, () => of('small bolt-down').toA],
    ['trade-fuse.large.from', 100, exact, () => of('large bolt-down').fromA],
    ['trade-fuse.strip.from', 35, exact, () => of('bolt-down strip').fromA],
    ['trade-fuse.strip.to', 750, exact, () => of('bolt-down strip').toA],
    ['trade-fuse.blade80.from', 1, exact, () => of('blade marked 80 V').fromA],
    ['trade-fuse.blade80.to', 40, exact, () => of('blade marked 80 V').toA],
    ['trade-fuse.blade80.volts', 80, exact, () => of('blade marked 80 V').mostV],
    ['trade-fuse.blade80.breaks', 1000, exact, () => of('blade marked 80 V').breaksA],
    ['trade-fuse.strip80.from', 35, exact, () => of('bolt-down strip marked 80 V').fromA],
    ['trade-fuse.strip80.to', 400, exact, () => of('bolt-down strip marked 80 V').toA],
    ['trade-fuse.strip80.volts', 80, exact, () => of('bolt-down strip marked 80 V').mostV],
    ['trade-fuse.strip80.breaks', 2500, exact, () => of('bolt-down strip marked 80 V').breaksA],
    ['trade-fuse.T.from', 1, exact, () => of('high-breaking, class T style').fromA],
    ['trade-fuse.T.to', 1200, exact, () => of('high-breaking, class T style').toA],
    ['trade-fuse.panel.from', 1, exact, () => panelFuse.fromA],
    ['trade-fuse.panel.to', 60, exact, () => panelFuse.toA],
    ['trade-fuse.panel.breaks', 20_000, exact, () => panelFuse.breaksA],
  ]),
];

const shorts: readonly Row[] = [
  ...cells('battery sheets: resistance of a block of 12 V and 100 Ah, mΩ', 'memory', [
    ['trade-short.lfp', 2, 0.3, () => shortMilliohm.lfp],
    ['trade-short.agm', 5, 0.9, () => shortMilliohm.agm],
    ['trade-short.gel', 6, 1, () => shortMilliohm.gel],
    ['trade-short.flooded', 7, 1.2, () => shortMilliohm.flooded],
    ['trade-short.lead', 5, 0.9, () => shortMilliohm['lead-acid']],
  ]),
  ...cells('charger sheets: the highest absorption of a block of 12 V, for flooded lead-acid', 'memory', [
    ['trade-full-block', 14.8, 0.2, () => fullBlockV],
  ]),
];

const airOf = (name: string, end: 'low' | 'high' | 'value'): number =>
  present(surroundingAssumptions().find(a => a.name === name))[end];

const laying: readonly Row[] = [
  ...cells('common practice: cables in a vehicle lie in air of 20 to 45 °C', 'memory', [
    ['trade-cable-air.low', 20, 2, () => airOf('cableAirC', 'low')],
    ['trade-cable-air.high', 45, 5, () => airOf('cableAirC', 'high')],
  ]),
  ...cells('definition: a cable by itself carries all of its current', 'recomputed', [
    ['D-alone', 1, exact, () => airOf('bundleShare', 'value')],
    ['D-alone.high', 1, exact, () => airOf('bundleShare', 'high')],
  ]),
  ...cells('common practice: auto cable of 6 mm is sold for 48 to 50 A', 'memory', [
    ['trade-auto.6', 49, 3, () => present(present(autoCable.at(-1)).soldForA)],
  ]),
];

export const rows: readonly Row[] = [...kinds, ...shorts, ...laying];
