import type { Reply } from '#answer/reply.ts';
import { rounded, span } from '#answer/say.ts';
import { powerBankShare } from '#rig/cell.ts';
import { figure } from '../figures.ts';
import { isSpotted } from '../spotting.ts';
import { wantedTime } from '../words.ts';
import type { BatterySize } from './compute.ts';

/** Sizes sold, Wh: up to the first few a power bank, above them a power station. Common practice. */
const sizesWh = [37, 74, 100, 150, 250, 300, 500, 700, 1000, 1500, 2000, 3000];
const mostOfPowerBankWh = 100;

/** What is taken for granted of a battery, and isn't of these. */
const ofTheBattery: ReadonlySet<string> = new Set([
  'depthOfDischarge',
  'batteryTemperature',
  'peukertExponent',
]);

const readyMade = ['power_bank*|powerbank*|powerbrick|power_station*|powerstation*|power_pack*|powerpack*'];

/**
 * A size in Wh where a power bank or station is asked for, in the place of a battery's Ah; undefined where none is.
 * @param answered the answer for a battery of the same use
 */
export function answerReadyMade(
  { explored, durationH, voltageV }: BatterySize,
  words: readonly string[],
  answered: Reply,
): Reply | undefined {
  if (!isSpotted(words, readyMade)) return undefined;
  const { dailyUse } = explored.figures;
  const wh = (dailyUseAh: number): number => (dailyUseAh * voltageV * (durationH / 24)) / powerBankShare;
  const needed = { value: wh(dailyUse.value), low: wh(dailyUse.low), high: wh(dailyUse.high) };
  const size = sizesWh.find(one => one >= needed.value);
  const sort = size === undefined || size > mostOfPowerBankWh ? 'power station' : 'power bank';
  const time = wantedTime(durationH);
  const range = needed.high - needed.low > 1 ? ` (${span(needed.low, needed.high, 'Wh')})` : '';
  return {
    ...answered,
    headline: `About ${rounded(needed.value)} Wh for ${time}${range}${size === undefined ? '' : `: a ${size} Wh ${sort}`}.`,
    lines: [
      'Of the Wh on its label it gives about 85 %.',
      size !== undefined && size <= mostOfPowerBankWh
        ? 'Power banks tell mAh at a 3.7 V cell: 10,000 mAh is 37 Wh.'
        : 'Its outlets must give the watts, too: look at what the biggest thing draws.',
    ],
    figures: { energyNeeded: figure(needed, 'Wh'), ...answered.figures },
    assumed: answered.assumed?.filter(({ name }) => !ofTheBattery.has(name)),
    next: answered.next?.filter(one => !/agm|lithium/.test(one)),
  };
}
