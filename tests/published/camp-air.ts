import { present } from '#basics/present.ts';
import { likelyOf } from '#engine/explore.ts';
import { airTemperature, dayTemperature } from '#engine/solar/air.ts';
import { coldestMorning, labelC } from '#engine/solar/cold.ts';
import { panelAssumptions, systemFactor } from '#engine/solar/panel.ts';
import { cells, type Row, row } from './row.ts';

const flat = { mount: 'flat', controller: 'mppt' } as const;
const values = { ...likelyOf(panelAssumptions(flat)), controllerEfficiency: 0.95 };
/** What heat takes or gives at a cell of some °C: the sun of 0.5 kW/m² heats it by half of what a full sun would. */
const byHeat = (cellC: number): number => {
  const ambientC = cellC - 0.5 * present(values.mountHeating);
  const at = (powerCoefficient: number) =>
    systemFactor({ ...flat, ambientC }, 0.5, { ...values, powerCoefficient });
  return at(-0.004) / at(0);
};

/** Air where nobody said a place, the coldest night of a cold one, and the cell that a label is for. */
export const rows: readonly Row[] = [
  ...cells('common practice: fair camping weather, °C by day, and over day and night', 'memory', [
    ['trade-fair.day.low', 15, 2.5, () => dayTemperature({}).low],
    ['trade-fair.day.high', 35, 4, () => dayTemperature({}).high],
    ['trade-fair.mean.low', 20, 3, () => airTemperature({}).low],
    ['trade-fair.mean.high', 32, 4, () => airTemperature({}).high],
  ]),
  row(
    'coldest-Winnipeg',
    'hardiness zone 3b: the coldest night of a year is −37 to −34 °C, as K below a label’s 25 °C',
    'memory',
    60.7,
    2.2,
    () => labelC - coldestMorning({ latitudeDeg: 49.9, longitudeDeg: -97.2 }).value,
  ),
  ...cells('IEC 61215: labels are for a cell of 25 °C; 0.4 % a kelvin, on paper', 'recomputed', [
    ['B1-20.25C', 1, 0.002, () => byHeat(25)],
    ['B1-20.45C', 0.92, 0.002, () => byHeat(45)],
  ]),
];
