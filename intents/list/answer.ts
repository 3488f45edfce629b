import type { Reply } from '#answer/reply.ts';
import { list as joined, sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { exactFigure, figure, reasons } from '../figures.ts';
import { whereAndWhen } from '../sun.ts';
import { chemistryName, wantedTime } from '../words.ts';
import type { ShoppingList } from './compute.ts';

/** Watts and amp hours as a person says them, to two figures. */
const rough = (value: number): string => decimals(Number(value.toPrecision(2)), 0);
/** Panels are told in these steps, W. */
const panelStepW = 20;
/** A battery over this is questioned, Ah. */
const hugeAh = 1000;

const sized = (count: number, sizeAh: number, chemistry: Chemistry): string =>
  `${count > 1 ? `${count} × ${sizeAh} Ah` : `${sizeAh} Ah of`} ${chemistryName(chemistry)}`;

const hasSun = ({ has, figures }: ShoppingList): boolean =>
  has.panel && Number.isFinite(figures.panelPower.value);

/** The battery, in both kinds where nobody told which. */
function batteryPart({ battery, chemistry, isChemistryAssumed, other, owned }: ShoppingList): string {
  if (owned.battery?.isEnough) return '';
  const told = `${sized(battery.count, battery.sizeAh, chemistry)}${owned.battery ? ' in all' : ''}`;
  return isChemistryAssumed ? `${told} (or ${sized(other.count, other.sizeAh, other.chemistry)})` : told;
}

/** The sizes, in the order in which they are bought; the first line has room for the first two or three. */
function parts(found: ShoppingList): string[] {
  const { figures, has, owned, controllerA } = found;
  const { panelPower, chargerCurrent, inverterPower } = figures;
  const panelW = decimals(Math.ceil(panelPower.value / panelStepW) * panelStepW, 0);
  return [
    batteryPart(found),
    hasSun(found) && !owned.panel?.isEnough ? `${panelW} W of solar${owned.panel ? ' in all' : ''}` : '',
    has.charger && !owned.charger?.isEnough ? `a ${decimals(chargerCurrent.value, 0)} A DC-DC charger` : '',
    has.inverter && !owned.inverter?.isEnough
      ? `a ${decimals(inverterPower.value, 0)} W pure sine inverter`
      : '',
    hasSun(found) && controllerA !== undefined && !owned.panel?.isEnough
      ? `a ${controllerA} A MPPT controller`
      : '',
    'a battery monitor (shunt)',
  ].filter(Boolean);
}

/** Cables with their fuses: as told, else as usually laid. */
function cables({ figures, has, fuseA, fuseKind, runs }: ShoppingList): string[] {
  const told =
    has.cable && fuseA !== undefined
      ? `For that run lay ${plain(figures.conductorArea.value)} mm² cable with a ${fuseA} A fuse (${fuseKind}).`
      : '';
  const usual = runs
    .map(
      run =>
        `${plain(run.areaMm2)} mm² to the ${run.to} (${run.lengthM} m, ${significant(run.fuseA)} A fuse${run.fuseKind ? `, ${run.fuseKind}` : ''})`,
    )
    .slice(0, has.cable ? 1 : 3);
  return [told, usual.length > 0 ? `Cable: ${joined(usual)}.` : ''].filter(Boolean);
}

/** What is there already, and whether it does. */
function ownedLine({ owned }: ShoppingList): string {
  const all = Object.values(owned);
  const name = (isEnough: boolean): string =>
    joined(all.filter(one => one.isEnough === isEnough).map(one => one.says));
  const [enough, short] = [name(true), name(false)];
  return [enough && `You have enough with your ${enough}.`, short && `Too small for it: your ${short}.`]
    .filter(Boolean)
    .join(' ');
}

/** What was taken for typical, and the one thing that would help most. */
function asks(facts: Facts, found: ShoppingList): string {
  const { typical, biggest, timed } = found;
  const guessed = biggest.find(({ name }) => typical.includes(name));
  const isPlaced = (facts.place ?? facts.latitudeDeg ?? facts.peakSunHours) !== undefined;
  const where = isPlaced || !hasSun(found) ? '' : 'Where and when do you camp?';
  if (!guessed) return where;
  const isAll = biggest.every(({ name }) => typical.includes(name));
  const named = isAll
    ? 'Those are typical figures'
    : `I took typical figures for ${joined(typical.slice(0, 4))}`;
  const isMost = 2 * guessed.chargeAh > biggest.reduce((sum, one) => sum + one.chargeAh, 0);
  if (isMost && timed.includes(guessed.name))
    return `${named}: how many hours a day is the ${guessed.name} on?`;
  return isMost ? `${named}: what does the ${guessed.name}’s plate say?` : `${named}. ${where}`.trim();
}

function lines(facts: Facts, found: ShoppingList, all: readonly string[], most: number): string[] {
  const { figures, has, sun, biggest, aloneH, owned } = found;
  const { batteryCapacity, dailyUse, acLoad } = figures;
  const rest = all.slice(most);
  const shares = biggest
    .slice(0, 3)
    .map(({ name, chargeAh }) => `${name} ${plain(chargeAh)}`)
    .join(', ');
  const made = hasSun(found) ? `, and the sun puts it back${whereAndWhen(facts, sun)}` : '';
  const inverter = has.inverter ? ` The inverter is for about ${rough(acLoad.value)} W at once.` : '';
  return [
    `${rest.length > 0 ? `You also need ${joined(rest)}.` : ''}${inverter}`.trim(),
    ...cables(found),
    ownedLine(found),
    `That’s for about ${plain(dailyUse.value)} Ah a day${biggest.length > 1 ? ` (${shares})` : ''}: the battery alone lasts ${wantedTime(aloneH)}${made}.${owned.battery?.isEnough ? '' : ` Light use gets by on ${rough(batteryCapacity.low)} Ah, heavy use takes ${rough(batteryCapacity.high)} Ah.`}`,
    batteryCapacity.value > hugeAh
      ? 'That is a very large battery: see what can go, or what else can charge it.'
      : '',
    asks(facts, found),
  ].filter(Boolean);
}

/** Words that fit the first line: as many of the parts as it has room for. */
const firstLine = 92;
function inFirst(all: readonly string[]): number {
  const fits = [3, 2].find(n => `You need ${joined(all.slice(0, n))}.`.length <= firstLine);
  return Math.min(fits ?? 1, all.length);
}

const days = (count: number): number => 24 * count;

/** Words for what to buy or bring: sizes, never makes. */
export function answerList(facts: Facts, found: ShoppingList): Reply {
  const { figures, has, fuseA } = found;
  const { batteryCapacity, dailyUse, panelPower, chargerCurrent, inverterPower, conductorArea } = figures;
  const all = parts(found);
  const most = inFirst(all);
  const cautions: CautionCode[] = ['fuse-at-battery'];
  if (has.inverter) cautions.push('mains-wiring');
  cautions.unshift(...loadCautions(facts));
  if (found.chemistry === 'lfp') cautions.push('lithium-cold');
  return {
    headline: sentence(`you need ${joined(all.slice(0, most))}.`),
    lines: lines(facts, found, all, most),
    verdict: null,
    figures: {
      batteryCapacity: figure(batteryCapacity, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
      ...(hasSun(found) && { panelPower: figure(panelPower, 'W') }),
      ...(has.charger && { chargerCurrent: figure(chargerCurrent, 'A') }),
      ...(has.inverter && { inverterPower: figure(inverterPower, 'W') }),
      ...(has.cable && { conductorArea: figure(conductorArea, 'mm²') }),
      ...(fuseA !== undefined && { fuseRating: exactFigure(fuseA, 'A') }),
    },
    ...reasons(found),
    cautions,
    next: [
      found.chemistry === 'lfp' ? 'what if agm?' : 'what if lithium?',
      // Where the sun puts it back, days more change nothing.
      has.panel ? 'what if no solar?' : facts.durationH === days(5) ? 'make it 3 days' : 'make it 5 days',
      'show the working',
    ],
  };
}
