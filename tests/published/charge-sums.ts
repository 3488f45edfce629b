import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargeAssumptions, chargeOf } from '#engine/charging/charge.ts';
import { likelyOf } from '#engine/explore.ts';
import { cells, type Row } from './row.ts';

/** A lithium battery of 100 Ah at a level (%), charged by 20 A; perhaps only so many Ah are to be put back. */
function charged(
  stateOfChargePercent: number | undefined,
  more: { missingAh?: number; targetPercent?: number; isFlat?: boolean } = {},
) {
  const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'lfp', stateOfChargePercent }]));
  const charge = { bank, isSizeAssumed: false, isIsolator: false, ...more };
  // A coulomb in is one stored but for a hundredth.
  return chargeOf(charge, 20, likelyOf(chargeAssumptions(charge)));
}

export const rows: readonly Row[] = [
  ...cells('definition, on paper: 20 A into 100 Ah of lithium, 99 % of which stays', 'recomputed', [
    ['Q-01.50 %, to 80 %: 30 Ah', 30 / 20 / 0.99, 0.02, () => charged(50).timeTo80H],
    ['Q-01.70 %, to 80 %: 10 Ah', 10 / 20 / 0.99, 0.02, () => charged(70).timeTo80H],
    ['Q-01.50 %, to 60 %: 10 Ah', 10 / 20 / 0.99, 0.02, () => charged(50, { targetPercent: 60 }).timeTo80H],
    ['Q-02.where it starts', 50, 1e-9, () => charged(50).startPercent],
    ['Q-02.where it starts, 20 Ah to put back', 60, 1e-9, () => charged(60, { missingAh: 20 }).startPercent],
    ['Q-03.50 %, after an hour', 70, 0.5, () => charged(50).percentAfter(1)],
    ['Q-03.20 %, after two hours', 60, 0.8, () => charged(20).percentAfter(2)],
    ['Q-04.what goes in to fill it from 50 %', 50 / 0.99, 0.3, () => charged(50).neededAh],
    ['Q-05.said to be flat, 10 % left', 90 / 0.99, 0.3, () => charged(undefined, { isFlat: true }).neededAh],
    ['Q-04.and to 80 %', 30 / 0.99, 0.3, () => charged(50, { targetPercent: 80 }).neededAh],
  ]),
];
