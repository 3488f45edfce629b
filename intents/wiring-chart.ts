import type { WiringBranch, WiringChart } from '#answer/chart/chart.ts';
import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import { cautions } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { type Sketch, type SketchBranch, sketchOf } from '#engine/cable/sketch.ts';
import type { SketchLead } from '#engine/cable/sketch-lead.ts';
import { isDrawTold, isWhole } from '#engine/loads/reading.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { describeBattery, describeCharger, describeLoad } from './describe.ts';

const mainsAside = 'mains not drawn';
const notPlan = 'A sketch to talk over, not a plan to build by.';
const everyMinus = 'Only + is drawn: each − goes back to the battery in a cable of the same size.';

const lead = ({ areaMm2, lengthM, fuseA, fuseKind }: SketchLead): WiringBranch['boxes'][number]['lead'] => ({
  areaMm2,
  lengthM,
  fuseA,
  fuseKind,
});

/** "2 × 100 W panel", "fridge 4 A", the draw of a load last. */
function namesOf({ charger, load, leads }: SketchBranch, facts: Facts, inSeries?: number): string[] {
  if (load) return [describeLoad({ ...load, hoursPerDay: undefined, minutesPerDay: undefined })];
  if (charger) {
    const name = sentence(describeCharger(charger));
    return charger.kind === 'mains' ? [name] : ['Starter battery', name];
  }
  if (leads[0].name === 'inverter') return [`${plain(present(present(facts.inverter).powerW))} W inverter`];
  const panels = (facts.solar ?? []).filter(panel => panel.powerW !== undefined);
  const told = panels.map(
    ({ count, powerW }) => `${count > 1 ? `${count} × ` : ''}${significant(present(powerW))} W`,
  );
  const controller = panels.find(panel => panel.controller)?.controller?.toUpperCase();
  const many = panels.length > 1 || present(panels[0]).count > 1;
  const how = inSeries === undefined || !many ? '' : inSeries > 1 ? ', in series' : ', in parallel';
  return [`${told.join(' + ')} panel${many ? 's' : ''}${how}`, `${controller ?? 'Solar'} controller`];
}

function branchOf(branch: SketchBranch, facts: Facts, inSeries?: number): WiringBranch {
  const names = namesOf(branch, facts, inSeries);
  const isMains = branch.charger?.kind === 'mains' || branch.leads[0].name === 'inverter';
  return {
    side: branch.side,
    boxes: branch.leads.map((run, i) => ({
      name: present(names[i]),
      lead: lead(run),
      ...(isMains && { also: mainsAside }),
    })),
  };
}

/** What stands under the sketch: the dangers of what is in it, as the answers say them. */
function warned(sketch: Sketch): string[] {
  const leads = [sketch.main, ...sketch.branches.flatMap(branch => branch.leads)];
  const hasMains = sketch.branches.some(
    ({ charger, leads: [first] }) => charger?.kind === 'mains' || first.name === 'inverter',
  );
  return [
    `${notPlan} ${cautions['fuse-at-battery']}`,
    ...(hasMains ? [cautions['mains-wiring']] : []),
    ...(leads.some(({ isTooMuch, currentA }) => isTooMuch || currentA >= 60)
      ? [cautions['big-current']]
      : []),
    ...(leads.some(({ isTooMuch }) => isTooMuch)
      ? ['Some of it is more than one cable and its fuse can carry: a higher voltage, or a licensed person.']
      : []),
    ...(sketch.exceedsA === undefined
      ? []
      : [
          `All at once asks more of the battery than it stands, about ${plain(sketch.exceedsA)} A: one thing at a time.`,
        ]),
    ...(sketch.isTooStrong ? ['The bank is stronger than one fuse breaks: each battery needs its own.'] : []),
  ];
}

function cutOf({ others }: Sketch): string {
  const names = others.map(load => load.name).join(', ');
  return others.length === 0
    ? everyMinus
    : `Not drawn: ${others.length} more (${names}), each behind a fuse of its own. ${everyMinus}`;
}

/** A rig's wiring as a picture, where there is a battery and something on it. */
export function wiringChart(facts: Facts, mainsV?: number, inSeries?: number): Reply['chart'] {
  const isSized = facts.batteries?.some(
    ({ role, capacityAh, energyWh }) => role !== 'starter' && (capacityAh ?? energyWh ?? 0) > 0,
  );
  const isHung =
    facts.inverter?.powerW !== undefined ||
    !!facts.chargers?.some(charger => charger.kind !== 'generator') ||
    !!facts.solar?.some(panel => panel.powerW !== undefined) ||
    !!facts.loads?.some(
      load =>
        load.supply === 'dc' && !isWhole(load) && (isDrawTold(load) || applianceOf(load.name) !== undefined),
    );
  return isSized && isHung ? () => chartOf(facts, mainsV, inSeries) : undefined;
}

function chartOf(facts: Facts, mainsV?: number, inSeries?: number): WiringChart {
  const sketch = sketchOf(facts, { mainsV, inSeries });
  const battery = present(facts.batteries)
    .filter(({ role }) => role !== 'starter')
    .map(one => describeBattery({ ...one, stateOfChargePercent: undefined }))
    .join(' + ');
  if (!sketch) throw new Error('nothing of that rig can be drawn');
  return {
    kind: 'wiring',
    title: `Wiring sketch of this rig, ${sketch.voltageV} V`,
    note: 'Lengths are usual ones, one way: measure yours, and ask me for a cable by its length.',
    battery: sentence(battery),
    main: lead(sketch.main),
    branches: sketch.branches.map(branch => branchOf(branch, facts, inSeries)),
    cut: cutOf(sketch),
    cautions: warned(sketch),
  };
}
