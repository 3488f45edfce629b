import { exactly } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { describeBattery, describeCharger, describeLoad, describePanels } from '#intents/describe.ts';
import { type ToldFact, toldFacts } from '#intents/unused.ts';
import { written } from '#intents/which-place.ts';
import { monthNames } from '#quantity/month-names.ts';
import type { Charger, Stated, StatedBattery, StatedLoad, StatedSolar } from '#rig/rig.ts';

const { significant } = english;
const number = (unit: string) => (value: unknown) => `${significant(value as number, 4)} ${unit}`.trim();
const said = (value: unknown): string => String(value).replace('-', ' ');

/** How a fact is called that stands by itself. */
const words: Readonly<Record<string, (value: unknown) => string>> = {
  dailyUseAh: number('Ah a day'),
  dailyUseWh: number('Wh a day'),
  systemVoltageV: number('V system'),
  durationH: value => `${exactly(value as number, english)} in all`,
  drivingHoursPerDay: number('h of driving a day'),
  chargeUsedAh: number('Ah used'),
  chargeLeftAh: number('Ah left'),
  chargeNeededAh: number('Ah to put back'),
  targetChargePercent: number('% wanted'),
  depthOfDischargePercent: number('% of it to be used'),
  volts: number('V read'),
  netCurrentA: value => number('A on the monitor')(Math.abs(value as number)),
  fuseA: number('A fuse'),
  alternatorA: number('A alternator'),
  alternator: value => `${said(value)} alternator`,
  ambientC: number('°C'),
  altitudeM: number('m up'),
  peakSunHours: number('sun hours'),
  solarAhPerDay: number('Ah of sun a day'),
  solarWhPerDay: number('Wh of sun a day'),
  place: value => `in ${written(value as string)}`,
  month: value => monthNames[(value as number) - 1] ?? said(value),
  sky: value => `${said(value)} sky`,
  shade: value => (value === 'none' ? 'no shade' : 'shade'),
  mount: value => `${said(value)} panels`,
  startHour: () => 'the hour it starts',
  drivingPlanH: () => 'the hours of driving',
  drivingH: number('h of driving'),
  generatorH: number('h of generator'),
  mainsH: value => (value === true ? 'a night on mains' : number('h on mains')(value)),
  surgeW: number('W surge'),
  wave: said,
  lengthM: number('m of cable'),
  areaMm2: number('mm² cable'),
  awg: number('AWG cable'),
  autoCableMm: number('mm auto cable'),
  dropLimitPercent: number('% drop'),
  stateOfChargePercent: number('% full'),
  wear: said,
  ageYears: value => `${number('years')(value)} of age`,
  maxCurrentA: number('A limit'),
  openCircuitV: number('V open circuit'),
  controller: value => (value as string).toUpperCase(),
  chemistry: value => (value === 'lfp' ? 'lithium' : (value as string)),
  startsPowerW: number('W to start'),
  hoursPerDay: number('h a day'),
  minutesPerDay: number('min a day'),
  hoursOnce: number('h once'),
  dutyPercent: number('% of the time'),
  currentA: number('A'),
  powerW: number('W'),
  voltageV: number('V'),
  capacityAh: number('Ah'),
  energyWh: number('Wh'),
  volumeL: number('L'),
  energyWhPerDay: number('Wh a day'),
  chargeAhPerDay: number('Ah a day'),
  isLeftOn: () => 'left on',
};

/** A fact that stands by itself, in few words; empty where it has none. */
export const figureInWords = (key: string, value: unknown): string => words[key]?.(value) ?? '';

/** Whose a figure is, where it could be another's: "fridge, 3 h a day". */
function owned(told: Stated, [key, at]: ToldFact['path'], text: string): string {
  const row =
    typeof at === 'number' ? (told as Record<string, { name?: string }[]>)[present(key)]?.[at] : undefined;
  const owner = key === 'inverter' ? 'inverter' : key === 'batteries' ? 'battery' : row?.name;
  return text === '' || owner === undefined || text.includes(owner) ? text : `${owner} ${text}`;
}

/** A thing of which nothing is used, in few words. */
function described(key: string, row: unknown): string {
  if (key === 'loads') return describeLoad(row as StatedLoad);
  if (key === 'batteries') return describeBattery(row as StatedBattery);
  if (key === 'chargers') return describeCharger(row as Charger);
  return describePanels(row as StatedSolar);
}

/** The rows of which no figure is used, each with the list that it stands in. */
export function wholly(told: Stated, unused: readonly ToldFact[]): (readonly [key: string, row: unknown])[] {
  const all = toldFacts(told);
  const rows = new Map<string, readonly [string, unknown]>();
  for (const { path } of unused) {
    const [key, at] = path;
    if (typeof at !== 'number' || key === 'days') continue;
    const ofRow = (facts: readonly ToldFact[]): number =>
      facts.filter(fact => fact.path[0] === key && fact.path[1] === at).length;
    if (ofRow(unused) === ofRow(all))
      rows.set(`${key} ${at}`, [
        key as string,
        present((told as Record<string, unknown[]>)[present(key)])[at],
      ]);
  }
  return [...rows.values()];
}

/** Facts in few words each: a thing of which no figure is used is named as a whole. */
export function factsInWords(told: Stated, unused: readonly ToldFact[]): string[] {
  const rows = wholly(told, unused);
  const parts = unused.map(({ path, value }) => {
    // "No driving" is no figure that a sum could miss.
    if (value === 0) return '';
    const [key, at] = path;
    const row =
      typeof at === 'number' ? present((told as Record<string, unknown[]>)[present(key)])[at] : undefined;
    const text = rows.some(([, one]) => one === row) ? described(key as string, row) : '';
    if (text !== '' && text !== 'battery') return text;
    return owned(told, path, figureInWords(String(path.at(-1)), value));
  });
  return [...new Set(parts.filter(Boolean))];
}
