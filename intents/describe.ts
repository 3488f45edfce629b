import { english, type Speech } from '#answer/speech.ts';
import { buildNamed } from '#engine/loads/build.ts';
import type { Charger, Rig, StatedBattery, StatedLoad, StatedSolar } from '#rig/rig.ts';
import { chemistryName } from './words.ts';

const times = (count = 1): string => (count > 1 ? `${count} × ` : '');
const number = (value: number, unit: string, words: Speech): string => `${words.significant(value)} ${unit}`;
const join = (parts: readonly (string | false | undefined)[]): string => parts.filter(Boolean).join(' ');
const aDay = (amount: string, words: Speech): string => words.say('a-day', '{amount} a day', { amount });

/** "100 Ah AGM"; other languages may put the size last. */
const sized = (size: string, kind: string, { say }: Speech): string =>
  size && kind ? say('sized', '{size} {kind}', { size, kind }) : size || kind;

const buildNames = {
  household: 'household',
  'three-way': 'three-way',
  thermoelectric: 'thermoelectric',
} as const;

/** "fridge 1.2 A", "2 × light 6 W, 5 h a day". */
export function describeLoad(load: StatedLoad, words: Speech = english): string {
  const draw =
    load.currentA !== undefined
      ? number(load.currentA, 'A', words)
      : load.powerW !== undefined
        ? number(load.powerW, 'W', words)
        : load.chargeAhPerDay !== undefined
          ? aDay(number(load.chargeAhPerDay, 'Ah', words), words)
          : load.energyWhPerDay !== undefined && aDay(number(load.energyWhPerDay, 'Wh', words), words);
  const time =
    load.hoursPerDay !== undefined
      ? aDay(number(load.hoursPerDay, 'h', words), words)
      : load.minutesPerDay !== undefined && aDay(number(load.minutesPerDay, 'min', words), words);
  const built = load.build !== undefined && buildNamed(load.name) !== load.build && buildNames[load.build];
  const size = load.volumeL !== undefined && number(load.volumeL, 'L', words);
  const running = load.isAverage === false && draw && words.say('while-running', 'while it runs');
  return [`${times(load.count)}${join([built, load.name, size, draw, running])}`, time]
    .filter(Boolean)
    .join(', ');
}

/** "2 × 100 Ah lithium". */
export function describeBattery(battery: StatedBattery, words: Speech = english): string {
  const size =
    battery.capacityAh !== undefined
      ? number(battery.capacityAh, 'Ah', words)
      : battery.energyWh !== undefined && number(battery.energyWh, 'Wh', words);
  const kind = battery.chemistry && chemistryName(battery.chemistry, words);
  const role =
    battery.role === 'starter'
      ? words.say('starter-battery', 'starter battery')
      : battery.isStation
        ? words.say('power-station', 'power station')
        : !kind && words.say('battery', 'battery');
  const percent = battery.stateOfChargePercent;
  const charge =
    percent !== undefined &&
    words.say('at-charge', 'at {percent} %', { percent: words.significant(percent) });
  const volts =
    battery.voltageV !== undefined && battery.voltageV !== 12 && number(battery.voltageV, 'V', words);
  const named = sized(join([size, volts]), join([kind, role]), words);
  return `${times(battery.count)}${join([named, charge])}`;
}

/** "2 × 100 W solar"; "some W solar" where nobody told how many. */
export const describePanels = ({ count, powerW }: StatedSolar): string =>
  `${count ? `${count} × ` : ''}${powerW ?? 'some'} W solar`;

const chargerNames = {
  dcdc: 'DC-DC charger',
  isolator: 'isolator',
  mains: 'mains charger',
  generator: 'generator',
} as const;

/** "25 A DC-DC charger". */
export function describeCharger({ kind, currentA, powerW }: Charger, words: Speech = english): string {
  const rating =
    currentA !== undefined
      ? number(currentA, 'A', words)
      : powerW !== undefined && number(powerW, 'W', words);
  return sized(rating || '', words.say(`charger-${kind}`, chargerNames[kind]), words);
}

/** A load of a rig, with whether the draw told is its average. */
function describeOwn(load: StatedLoad, words: Speech): string {
  const isMean = load.isAverage === true && (load.currentA ?? load.powerW) !== undefined;
  return `${describeLoad(load, words)}${isMean ? ` ${words.say('on-average', 'on average')}` : ''}`;
}

/** A rig as a list of short parts: batteries first, then what charges them, then what they run. */
export function describeRig(rig: Rig, words: Speech = english): string[] {
  const { solar = [], batteries = [], chargers = [], loads = [], inverter, place } = rig;
  const { say } = words;
  const controller = solar.find(s => s.controller)?.controller?.toUpperCase();
  const panels = solar
    .map(
      s => `${times(s.count)}${s.powerW === undefined ? say('some', 'some') : number(s.powerW, 'W', words)}`,
    )
    .join(' + ');
  return [
    ...batteries.map(battery => describeBattery(battery, words)),
    solar.length > 0 && join([sized(panels, say('solar', 'solar'), words), controller && `(${controller})`]),
    ...chargers.map(charger => describeCharger(charger, words)),
    rig.alternator === 'smart' && say('smart-alternator', 'smart alternator'),
    inverter &&
      sized(
        inverter.powerW === undefined ? '' : number(inverter.powerW, 'W', words),
        inverter.wave
          ? say(`inverter-${inverter.wave}`, `${inverter.wave.replace('-', ' ')} inverter`)
          : say('inverter', 'inverter'),
        words,
      ),
    inverter?.isLeftOn && say('left-on', 'left on'),
    ...loads.map(load => describeOwn(load, words)),
    rig.dailyUseAh !== undefined && aDay(number(rig.dailyUseAh, 'Ah', words), words),
    rig.dailyUseWh !== undefined && aDay(number(rig.dailyUseWh, 'Wh', words), words),
    place !== undefined && say('at-place', 'at {place}', { place }),
  ].filter((part): part is string => typeof part === 'string');
}
