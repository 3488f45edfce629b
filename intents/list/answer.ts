import type { Reply } from '#answer/reply.ts';
import { list as joined, span } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import { whereAndWhen } from '../sun.ts';
import { chemistryName, wantedTime } from '../words.ts';
import type { ShoppingList } from './compute.ts';

/** Watts as a person says them, to two figures. */
const watts = (value: number): string => decimals(Number(value.toPrecision(2)), 0);
/** Panels are told in these steps, W. */
const panelStepW = 20;
/** A battery over this is questioned, Ah. */
const hugeAh = 1000;

const batteryOf = ({ battery, chemistry }: ShoppingList): string => {
  const size = battery.count > 1 ? `${battery.count} × ${battery.sizeAh} Ah` : `${battery.sizeAh} Ah`;
  return `a battery of ${size} ${chemistryName(chemistry)}`;
};

/** The sizes, in the order in which they are bought; the first line has room for the first two. */
function parts(found: ShoppingList): string[] {
  const { figures, has, fuseA, fuseKind } = found;
  const { panelPower, chargerCurrent, inverterPower, conductorArea } = figures;
  const hasSun = has.panel && Number.isFinite(panelPower.value);
  return [
    batteryOf(found),
    hasSun
      ? `${decimals(Math.ceil(panelPower.value / panelStepW) * panelStepW, 0)} W of solar with its controller`
      : '',
    has.charger ? `a ${decimals(chargerCurrent.value, 0)} A DC-DC charger` : '',
    has.inverter ? `a ${decimals(inverterPower.value, 0)} W pure sine inverter` : '',
    has.cable ? `${plain(conductorArea.value)} mm² cable` : '',
    fuseA === undefined ? 'a fuse for each circuit' : `a ${fuseA} A fuse (${fuseKind})`,
  ].filter(Boolean);
}

/** Words for what to buy or bring: sizes, never makes. */
export function answerList(facts: Facts, found: ShoppingList): Reply {
  const { figures, has, fuseA, typical } = found;
  const { batteryCapacity, dailyUse, panelPower, chargerCurrent, inverterPower, acLoad, conductorArea } =
    figures;
  const hasSun = has.panel && Number.isFinite(panelPower.value);
  const all = parts(found);
  const most = 2;
  const rest = all.slice(most);
  const cautions: CautionCode[] = ['fuse-at-battery'];
  if (has.inverter) cautions.push('mains-wiring');
  cautions.push(...loadCautions(facts));
  if (found.chemistry === 'lfp') cautions.push('lithium-cold');
  const where = whereAndWhen(facts, found.sun);
  const lines = [
    `That is for about ${plain(dailyUse.value)} Ah a day: ${wantedTime(found.aloneH)} on the battery alone (${span(batteryCapacity.low, batteryCapacity.high, 'Ah')})${hasSun ? `, and the panel puts a day's use back${where}` : ''}.`,
    typical.length > 0 ? `Typical figures for ${joined(typical.slice(0, 4))}: the plate’s come first.` : '',
    has.inverter ? `The inverter runs about ${watts(acLoad.value)} W at once; short, thick cable to it.` : '',
    batteryCapacity.value > hugeAh
      ? 'That is a very large battery: see what can go, or what else can charge it.'
      : '',
    found.isChemistryAssumed ? 'Lithium does it with about two thirds of the amp hours.' : '',
  ].filter(Boolean);
  return {
    headline: `You need ${joined(all.slice(0, most))}.`,
    lines: [rest.length > 0 ? `Also: ${joined(rest)}.` : '', ...lines].filter(Boolean).slice(0, 5),
    verdict: null,
    figures: {
      batteryCapacity: figure(batteryCapacity, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
      ...(hasSun && { panelPower: figure(panelPower, 'W') }),
      ...(has.charger && { chargerCurrent: figure(chargerCurrent, 'A') }),
      ...(has.inverter && { inverterPower: figure(inverterPower, 'W') }),
      ...(has.cable && { conductorArea: figure(conductorArea, 'mm²') }),
      ...(fuseA !== undefined && { fuseRating: figure({ value: fuseA, low: fuseA, high: fuseA }, 'A') }),
    },
    ...reasons(found),
    cautions,
    next: [
      found.isChemistryAssumed ? 'what if lithium?' : 'what if agm?',
      'make it 5 days',
      'show the working',
    ],
  };
}
