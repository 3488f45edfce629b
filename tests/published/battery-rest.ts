import { present } from '#basics/present.ts';
import { chargingAboveV, restVolts } from '#engine/battery/rest-table.ts';
import type { Chemistry } from '#rig/rig.ts';
import { cells, type Row, row } from './row.ts';

/** The row of our table at a percentage that the published ones have too; without it the row from outside fails. */
const at = (kind: Chemistry, percent: number): readonly number[] =>
  present(restVolts[kind].find(([p]) => p === percent));

/** Gravity of the acid at a charge (%): the middles of the published bands, 1.12 empty, 1.19 half, 1.265 full. */
const gravityAt = (percent: number): number =>
  percent < 50 ? 1.12 + (percent / 50) * 0.07 : 1.19 + ((percent - 50) / 50) * 0.075;
/** Open-circuit volts of six cells by the gravity of their acid: textbook relation. */
const sixCells = (percent: number): number => 6 * (gravityAt(percent) + 0.845);

const lead = ['flooded', 'agm', 'gel', 'lead-acid'] as const;
const columns = ['low', 'likely', 'high'] as const;

/** The whole span has to lie round what the acid gives: sealed types hold stronger acid, up to half a volt more. */
const byGravity: readonly Row[] = lead.flatMap(kind =>
  [10, 25, 30, 50, 60, 75, 90, 100]
    .filter(percent => kind === 'flooded' || ![30, 60].includes(percent))
    .flatMap(percent =>
      columns.map((column, i) =>
        row(
          `C3-21.${kind}.${percent}.${column}`,
          `open-circuit volts by the acid's gravity, textbook, ${kind} at ${percent} %`,
          'recomputed',
          sixCells(percent),
          0.7,
          () => present(at(kind, percent)[i + 1]),
          'the relation is for flooded cells; sealed ones read up to half a volt more, old ones less',
        ),
      ),
    ),
);

const empty: readonly Row[] = lead.flatMap(kind => [
  row(`C3-13.${kind}.low`, 'common practice: empty at 1.75 V a cell, 10.5 V', 'memory', 10.5, 0.1, () =>
    present(at(kind, 0)[1]),
  ),
  row(
    `C3-13.${kind}.likely`,
    'common practice: empty, 10.5 to 11.6 V at rest, sealed up to 11.8 V',
    'memory',
    11.15,
    0.65,
    () => present(at(kind, 0)[2]),
  ),
  row(
    `C3-13.${kind}.high`,
    'common practice: empty, 11.6 V at rest, sealed a little more',
    'memory',
    11.6,
    0.3,
    () => present(at(kind, 0)[3]),
  ),
]);

/** Four cells of lithium iron phosphate: published at 100, 50 and 20 %, between them on a straight line. */
const fourCells = (percent: number): number =>
  percent >= 50 ? 13.2 + ((percent - 50) / 50) * 0.4 : 12.8 + ((percent - 20) / 30) * 0.4;

const lithium: readonly Row[] = [
  ...[20, 30, 40, 50, 60, 70, 80, 90, 95, 100].flatMap(percent =>
    columns.map((column, i) =>
      row(
        `C3-24.${percent}.${column}`,
        `common practice: LFP of four cells at rest, ${percent} %`,
        'memory',
        fourCells(percent),
        0.35,
        () => present(at('lfp', percent)[i + 1]),
        'published at 100, 50 and 20 %, straight between',
      ),
    ),
  ),
  ...cells('LFP cells, 2.5 V empty and 3.0 to 3.2 V at a tenth, from memory', 'memory', [
    ['C3-24.0.low', 4 * 2.5, 0.1, () => present(at('lfp', 0)[1])],
    ['C3-24.0.likely', 4 * 2.75, 0.5, () => present(at('lfp', 0)[2])],
    ['C3-24.0.high', 4 * 3, 0.5, () => present(at('lfp', 0)[3])],
    ['C3-24.10.low', 4 * 3, 0.3, () => present(at('lfp', 10)[1])],
    ['C3-24.10.likely', 4 * 3.15, 0.3, () => present(at('lfp', 10)[2])],
    ['C3-24.10.high', 4 * 3.2, 0.3, () => present(at('lfp', 10)[3])],
  ]),
];

/** A rested battery never reads more than a full one; what reads more hangs on a charger. */
const onCharge = cells(
  'common practice: a full battery at rest, and the surface charge of an hour ago',
  'memory',
  [
    ['C3-01.above', 12.8, 0.3, () => chargingAboveV.flooded],
    ['C3-01.above.agm', 13.2, 0.3, () => chargingAboveV.agm],
    ['C3-01.above.gel', 13.1, 0.3, () => chargingAboveV.gel],
    ['C3-01.above.lead', 13.1, 0.3, () => chargingAboveV['lead-acid']],
    ['C3-24.above', 13.6, 0.2, () => chargingAboveV.lfp],
  ],
);

export const rows: readonly Row[] = [...byGravity, ...empty, ...lithium, ...onCharge];
