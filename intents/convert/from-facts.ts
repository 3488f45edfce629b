import type { Reply } from '#answer/reply.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { exactFigure } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { onAPlane } from './sums/on-a-plane.ts';

/** The trade's 12 V. */
const tradeV = 12;
/** Minutes of reserve capacity are told at so many amps. BCI and EN 50342. */
const reserveA = 25;

/** Watt hours told of a day, of the sun or of what runs so long. */
function wattHours({ solarWhPerDay, dailyUseWh, loads = [] }: Facts): number | undefined {
  const [load, other] = loads;
  const hours = load?.hoursOnce ?? load?.hoursPerDay;
  const ofLoad =
    load?.powerW === undefined || hours === undefined || other ? undefined : load.count * load.powerW * hours;
  return solarWhPerDay ?? dailyUseWh ?? ofLoad;
}

const sayWh = (wh: number, voltageV: number): Reply => ({
  headline: `${significant(wh)} Wh at ${significant(voltageV)} V is ${significant(wh / voltageV)} Ah.`,
  lines: [`Divide by the volts (${significant(voltageV)} V) to go from watt hours to amp hours.`],
  verdict: null,
  figures: { result: exactFigure(wh / voltageV, 'Ah') },
  next: ['what is an amp hour?', '100Ah in Wh'],
});

/** Two batteries held against each other by what they store: "is 200Ah 12V the same as 100Ah 24V". */
function sameEnergy({ batteries = [] }: Facts): Reply | undefined {
  const [one, two, more] = batteries.map(({ capacityAh, voltageV, count }) =>
    capacityAh === undefined || voltageV === undefined
      ? undefined
      : { says: `${plain(capacityAh)} Ah at ${plain(voltageV)} V`, wh: count * capacityAh * voltageV },
  );
  if (!one || !two || more) return undefined;
  const isSame = Math.abs(one.wh - two.wh) < 0.03 * Math.max(one.wh, two.wh);
  return {
    headline: isSame
      ? `Yes, in what they store: both are ${significant(one.wh)} Wh.`
      : `No: ${one.says} is ${significant(one.wh)} Wh, ${two.says} is ${significant(two.wh)} Wh.`,
    lines: ['Amp hours times volts are watt hours. Gear for one voltage doesn’t run on the other.'],
    verdict: isSame ? 'yes' : 'no',
    figures: { result: exactFigure(one.wh, 'Wh') },
    next: ['100Ah in Wh'],
  };
}

/** Longer than this is a stay and no time that something ran, h. */
const stayH = 48;

/** Ah over the hours that they were used in, as amps on average: "28 Ah from 8 to 8". */
function averageOf({ chargeUsedAh, durationH }: Facts): Reply | undefined {
  if (chargeUsedAh === undefined || !durationH || durationH > stayH) return undefined;
  const amps = chargeUsedAh / durationH;
  return {
    headline: `${plain(chargeUsedAh)} Ah over ${plain(durationH)} hours is ${significant(amps, 2)} A on average.`,
    lines: [`That would be about ${plain(24 * amps)} Ah a day, if it goes on like that.`],
    verdict: null,
    figures: { result: exactFigure(amps, 'A') },
    next: ['60W in amps'],
  };
}

/** Words of the battery's side of a converter or inverter. */
const ofBatterySide: readonly string[] = [
  'at_twelve|battery_side|twelve_side|on_the|at|dc_amps|from_the_battery|side',
];
/** Of what goes in, what comes out of an inverter and of a small converter. Common practice. */
const passedOn = { inverter: 0.88, converter: 0.9 } as const;
const usbV = 5;

/** What amps told at mains or USB volts take from the battery: "0.8 A at 240 through the inverter, at 12 V". */
function onBatterySide(facts: Facts, { parsed, mainsV = 230 }: RequestContext): Reply | undefined {
  const { words, mentions } = parsed.recognised;
  const [load, other] = facts.loads ?? [];
  if (!load || other || load.currentA === undefined || !isSpotted(words, ofBatterySide)) return undefined;
  const isUsb = load.name.includes('usb');
  if (load.supply !== 'ac' && !isUsb) return undefined;
  const volts = mentions.map(({ dimension, value }) => (dimension === 'voltage' ? value : 0));
  const atV = isUsb ? (volts.find(value => value > 4 && value < 21) ?? usbV) : mainsV;
  const watts = load.count * load.currentA * atV;
  const twelve =
    facts.systemVoltageV !== undefined && facts.systemVoltageV <= 60 ? facts.systemVoltageV : tradeV;
  const amps = watts / twelve / (isUsb ? passedOn.converter : passedOn.inverter);
  return {
    headline: `About ${significant(amps, 2)} A at ${plain(twelve)} V: ${significant(watts, 2)} W, and the ${isUsb ? 'converter' : 'inverter'}’s loss.`,
    lines: ['The watts stay the same, only the volts are fewer; some 10 to 15 % are lost on the way.'],
    verdict: null,
    figures: { result: exactFigure(amps, 'A') },
    next: ['60W in amps'],
  };
}

/** A battery told by its Ah and volts as Wh, where that is asked or claimed of it. */
function storedIn(facts: Facts, { parsed }: RequestContext): Reply | undefined {
  const [one, other] = facts.batteries ?? [];
  if (!one || other || one.capacityAh === undefined) return undefined;
  if (!isSpotted(parsed.recognised.words, ['wh|watt_hours|watt_hour|kwh|kilowatt_hours'])) return undefined;
  const [voltageV, ah] = [one.voltageV ?? tradeV, one.count * one.capacityAh];
  const cell =
    one.chemistry === 'lfp'
      ? ` Makers count ${significant(lithiumV)} V: ${significant(ah * lithiumV)} Wh.`
      : '';
  return {
    headline: `${plain(ah)} Ah at ${significant(voltageV)} V is ${significant(ah * voltageV)} Wh.${cell}`,
    lines: ['Amp hours times volts are watt hours.'],
    verdict: null,
    figures: { result: exactFigure(ah * voltageV, 'Wh') },
    next: ['what is an amp hour?'],
  };
}
/** Nominal volts of four LiFePO4 cells: 3.2 V each. */
const lithiumV = 12.8;

/** Reserve capacity in minutes as amp hours. */
function ofReserve({ parsed }: RequestContext): Reply | undefined {
  const { words, mentions } = parsed.recognised;
  const minutes = mentions.find(
    ({ dimension, told, value }) => dimension === 'time' && value < 10 && told > 20,
  )?.told;
  if (minutes === undefined || !isSpotted(words, ['reserve_capacity|reserve|rc'])) return undefined;
  const ah = (minutes * reserveA) / 60;
  return {
    headline: `About ${plain(ah)} Ah at that rate: ${plain(minutes)} minutes at ${reserveA} A.`,
    lines: [
      `Told over 20 hours, as deep-cycle batteries are, it is some ${plain(1.2 * ah)} to ${plain(1.4 * ah)} Ah.`,
    ],
    verdict: null,
    figures: { result: exactFigure(ah, 'Ah') },
    next: ['100Ah in Wh'],
  };
}

/** "Can I divide watts by ten?" */
const byTen: Reply = {
  headline: 'Near enough: at 12 V divide the watts by 12; by 10 for what runs through an inverter.',
  lines: ['Dividing by 10 counts in what the inverter and a sagging battery lose.'],
  verdict: 'yes',
  next: ['60W in amps'],
};

/** "How many watts per amp?" */
const perAmp: Reply = {
  headline: '12 W for each amp at 12 V: watts are amps times volts. At 230 V it is 230 W.',
  verdict: null,
  next: ['60W in amps'],
};

/** The numbers of the facts that such an answer goes by. */
export const factNumbersOf = ({
  solarWhPerDay,
  dailyUseWh,
  ambientC,
  batteries = [],
  loads = [],
}: Stated): number[] =>
  [
    solarWhPerDay,
    dailyUseWh,
    ambientC,
    ...batteries.flatMap(({ capacityAh, voltageV, count }) => [capacityAh, voltageV, count]),
    ...loads.flatMap(({ powerW, count, hoursOnce, hoursPerDay }) => [powerW, count, hoursOnce, hoursPerDay]),
  ].filter(number => number !== undefined);

/** What is turned into another unit by the facts told, where no number with its unit and the one wanted stands in the words. */
export function convertedFacts(facts: Facts, setting: RequestContext): Reply | undefined {
  const { words } = setting.parsed.recognised;
  const reserve = ofReserve(setting);
  if (reserve) return reserve;
  if (isSpotted(words, ['divide|dividing|divided watts|amps'])) return byTen;
  if (isSpotted(words, ['watts_per_amp|watts_in_an_amp|watts_to_an_amp|watts_is_an_amp|watts_is_one_amp']))
    return perAmp;
  const { ambientC } = facts;
  if (ambientC !== undefined && isSpotted(words, ['fahrenheit|celsius|centigrade|f|c']))
    return {
      headline: `That is ${plain(ambientC)} degrees Celsius, or ${plain(ambientC * 1.8 + 32)} Fahrenheit.`,
      verdict: null,
      figures: { result: exactFigure(ambientC, '°C') },
      next: ['60W in amps'],
    };
  const aboard = onAPlane(facts, words);
  if (aboard) return aboard;
  const average = averageOf(facts);
  if (average) return average;
  const side = onBatterySide(facts, setting);
  if (side) return side;
  const stored = storedIn(facts, setting);
  if (stored) return stored;
  const wh = wattHours(facts);
  return wh === undefined ? sameEnergy(facts) : sayWh(wh, facts.systemVoltageV ?? tradeV);
}
