import { present } from '#basics/present.ts';
import type { Assumption, Values } from '../assumption.ts';
import { type Cooler, usualCooler } from './cooler.ts';
import { leakSpread, volumeSpread } from './cooler-table.ts';
import { inputPowerW } from './draw.ts';
import { largestHouseholdL } from './household-table.ts';
import { isDrawTold, type ReadLoad, type Use } from './reading.ts';

/** The box that a reading stands for, by what was told and assumed of it. */
export function coolerOf(reading: ReadLoad, use: Use, values: Values): Cooler {
  const { key, row, kind, load } = reading;
  // The box stays as it is while the draw of its compressor is moved.
  const usual = usualCooler(present(present(row).setPointC), present(inputPowerW(reading, use, {})), kind);
  const usualL = kind && 'drawsW' in kind ? Math.min(largestHouseholdL, usual.volumeL) : usual.volumeL;
  return {
    ...usual,
    volumeL: load.volumeL ?? values[`${key} volume`] ?? usualL,
    leak: values[`${key} walls`] ?? 1,
    goodsShare: values[`${key} openings`] ?? usual.goodsShare,
    powerW: present(inputPowerW(reading, use, values)),
  };
}

/** What is taken for granted of a thing that cools, where its share of the time wasn't told. */
export function coolerAssumptions(reading: ReadLoad, use: Use): Assumption[] {
  const { volumeL } = coolerOf(reading, use, {});
  const isTold = isDrawTold(reading.load);
  const isSized = reading.load.volumeL !== undefined;
  const [less, more] = volumeSpread[isTold ? 'told' : 'open'];
  const why = isTold ? 'usual for that draw, common practice' : 'a usual one, common practice';
  const [low, value, high] = present(reading.kind).goodsShare;
  const [tight, leaky] = leakSpread;
  return [
    isSized
      ? {
          name: `${reading.key} walls`,
          value: 1,
          low: tight,
          high: leaky,
          unit: '',
          why: 'as boxes of that size let heat in, common practice',
        }
      : {
          name: `${reading.key} volume`,
          value: volumeL,
          low: volumeL * less,
          high: volumeL * more,
          unit: 'L',
          why,
        },
    {
      name: `${reading.key} openings`,
      value,
      low,
      high,
      unit: '',
      why: 'and warm goods, on top of what its walls let in; common practice',
    },
  ];
}
