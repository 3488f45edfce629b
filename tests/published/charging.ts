import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import {
  chargingCurrent,
  kneeMissing,
  missingInTail,
  tailTime,
  voltageAtTemperature,
} from '#engine/battery/charge-rules.ts';
import { chargeTable, voltageCompensation } from '#engine/battery/charge-table.ts';
import { absorptionVoltage } from '#engine/battery/charging.ts';
import { chargeRateC } from '#engine/battery/limits.ts';
import { usualTrip } from '#engine/battery/round-trip.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const common = 'common practice, battery makers’ sheets that agree';
const consensus = 'lead-acid makers’ absorption windows, from memory';
const woodbridge = 'ampere-hour law (Woodbridge, 1935): amperes not above the ampere-hours out';
const { agm, gel, flooded, lfp } = chargeTable;
const one = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
const two = present(bankOf([{ count: 2, capacityAh: 100, chemistry: 'agm' }], 'series'));

const compensated = (V_25: number, T: number, cells: number) =>
  run(voltageAtTemperature, { V_25, k_V: (voltageCompensation.perK / 6) * cells, T, T_25: 25 });

const row = (
  id: string,
  from: string,
  how: Row['how'],
  gives: number,
  within: number,
  ours: () => number,
  differs?: string,
): Row => ({ id, from, how, gives, within, run: ours, differs });

export const rows: readonly Row[] = [
  row('C4-01.hot', common, 'memory', 2.27, 0.001, () => compensated(2.3, 35, 1)),
  row('C4-01.cold', common, 'memory', 2.33, 0.001, () => compensated(2.3, 15, 1)),
  row('C4-02.hot', common, 'recomputed', 13.62, 0.01, () => compensated(13.8, 35, 6)),
  row('C4-02.cold', common, 'recomputed', 13.98, 0.01, () => compensated(13.8, 15, 6)),
  row(
    'C4-02.bank',
    common,
    'recomputed',
    0.18,
    1e-9,
    () => absorptionVoltage(one, 15) - absorptionVoltage(one),
  ),
  row(
    'C4-02.24V',
    common,
    'recomputed',
    0.36,
    1e-9,
    () => absorptionVoltage(two, 15) - absorptionVoltage(two),
  ),
  row('C4-03.low', common, 'memory', -0.018, 1e-9, () => voltageCompensation.high),
  row('C4-03.high', common, 'memory', -0.03, 1e-9, () => voltageCompensation.low),
  // The middle of each published window, and half its width.
  row('C4-04.flooded', consensus, 'memory', 14.6, 0.2, () => flooded.absorptionV[0]),
  row('C4-04.agm', consensus, 'memory', 14.45, 0.25, () => agm.absorptionV[0]),
  row('C4-04.gel', consensus, 'memory', 14.2, 0.2, () => gel.absorptionV[0]),
  row('C4-05.gel', common, 'memory', 13.4, 0.2, () => gel.floatV),
  row('C4-05.agm', common, 'memory', 13.5, 0.2, () => agm.floatV),
  row('C4-05.flooded', common, 'memory', 13.8, 0.2, () => flooded.floatV),
  row('C4-06', common, 'memory', 14.4, 0.2, () => lfp.absorptionV[0]),
  row('C4-06.low', common, 'memory', 14, 0.05, () => lfp.absorptionV[1]),
  row('C4-06.high', common, 'memory', 14.6, 0.05, () => lfp.absorptionV[2]),
  row('C4-09.cold', common, 'memory', 0, 0, () => chargeRateC({ chemistry: 'lfp' }, -0.1)),
  row('C4-10.flooded', common, 'memory', 0.85, 0.05, () => usualTrip('flooded').chargeShare),
  row('C4-10.gel', common, 'memory', 0.85, 0.05, () => usualTrip('gel').chargeShare),
  row('C4-10.agm', common, 'memory', 0.85, 0.05, () => usualTrip('agm').chargeShare),
  row('C4-11.lead', common, 'memory', 0.815, 0.035, () => usualTrip('agm').energyShare),
  row('C4-11.lfp', common, 'memory', 0.95, 0.03, () => usualTrip('lfp').energyShare),
  row(
    'C4-12',
    'Stevens & Corey, lead-acid efficiency near top-of-charge (Sandia)',
    'seen',
    0.975,
    0.025,
    () => flooded.efficiency[0],
    'the source says above 95 % while low; the middle of 95–100 % and half of it',
  ),
  row(
    'C4-12.falls',
    'Stevens & Corey (Sandia)',
    'seen',
    0.1,
    0.06,
    () => flooded.efficiency[0] - usualTrip('flooded').chargeShare,
  ),
  // In its first form the time constant is an hour: 60 Ah out, 60 A at most.
  row('W-01', woodbridge, 'memory', 60, 1e-9, () =>
    run(chargingCurrent, { I_s: 200, I_c: 200, m: 60, tau: 1 }),
  ),
  row('W-01.source', woodbridge, 'memory', 25, 1e-9, () =>
    run(chargingCurrent, { I_s: 25, I_c: 30, m: 60, tau: 1 }),
  ),
  row('W-01.chemistry', woodbridge, 'memory', 30, 1e-9, () =>
    run(chargingCurrent, { I_s: 50, I_c: 30, m: 60, tau: 1 }),
  ),
  row('W-02', `${woodbridge}; 36.8 % is left after an hour`, 'recomputed', 36.79, 0.01, () =>
    run(missingInTail, { m_k: 100, eta_c: 1, t: 1, tau: 1 }),
  ),
  row('W-03', `${woodbridge}; half of it takes ln 2 hours`, 'recomputed', Math.LN2, 1e-9, () =>
    run(tailTime, { tau: 1, eta_c: 1, m_k: 50, m_e: 25 }),
  ),
  row('W-04', `${woodbridge}; 25 A hold until 25 Ah are missing`, 'recomputed', 25, 1e-9, () =>
    run(kneeMissing, { m_0: 60, m_e: 2, I: 25, tau: 1 }),
  ),
];
