import { significant } from '#quantity/round.ts';
import type { Converted, ThroughInverter } from './compute.ts';

/** What a thing for mains takes from a battery, in words: the amps first, then why they are more than the plain sum. */
export function saysThrough({ currentA, inputW, labelW }: ThroughInverter, result: Converted) {
  const { value, voltageV = 12 } = result;
  const volts = significant(voltageV);
  const amps = (number: number): string => significant(number, 2);
  const cooks =
    inputW > 1.05 * labelW
      ? [
          `A microwave's watts are what it cooks with: it takes about ${amps(inputW)} W. If yours are its input, say so.`,
        ]
      : [];
  return {
    headline: `About ${amps(currentA.value)} A from a ${volts} V battery, through an inverter (${amps(currentA.low)}–${amps(currentA.high)} A).`,
    lines: [
      `${significant(labelW)} W at ${volts} V alone would be ${significant(value)} A; the inverter's loss and the battery's sag come on top.`,
      ...cooks,
    ],
  };
}
