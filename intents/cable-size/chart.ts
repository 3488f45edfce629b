import type { WiringChart } from '#answer/chart/chart.ts';
import { sentence } from '#answer/say.ts';
import { cautions } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { unhandled } from '#basics/unhandled.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { describeBattery, describeCharger, describeLoad, describePanels } from '../describe.ts';
import type { CableSize } from './compute.ts';

/** What hangs on the cable, by its name. */
function nameOf(facts: Facts, { kind, figures }: CableSize): string {
  switch (kind) {
    case 'inverter':
      return `${plain(present(present(facts.inverter).powerW))} W inverter`;
    case 'loads':
      return present(facts.loads)
        .map(load => describeLoad(load))
        .join(', ');
    case 'dcdc':
    case 'charger':
      return describeCharger(
        present(present(facts.chargers).find(c => (kind === 'dcdc') === (c.kind === 'dcdc'))),
      );
    case 'solar':
      return present(facts.solar).map(describePanels).join(' + ');
    case 'told':
      return `${significant(figures.current.value)} A`;
    default:
      return unhandled(kind);
  }
}

const ends: Readonly<Partial<Record<CableSize['kind'], string>>> = {
  dcdc: 'Starter battery',
  solar: 'Solar controller',
};

/** The one cable that was asked for, with its fuse, from what hangs on it to what feeds it. */
export function cableChart(facts: Facts, result: CableSize): WiringChart {
  const { conductor, kind, lengthM, fuseA, fuseType, figures } = result;
  const house = facts.batteries?.find(({ role }) => role !== 'starter');
  const battery = ends[kind] ?? (house ? describeBattery(house) : 'Battery');
  const isCharging = kind === 'solar' || kind === 'charger';
  return {
    kind: 'wiring',
    title: `${significant(conductor.areaMm2)} mm² over ${significant(lengthM)} m: it loses ${significant(figures.voltageDrop.value, 2)} V`,
    note: `At ${plain(figures.current.value)} A, ${significant(result.voltageV)} V; the length is one way.`,
    battery: sentence(battery),
    branches: [
      {
        side: isCharging ? 'in' : 'out',
        boxes: [
          {
            name: sentence(nameOf(facts, result)),
            ...(kind === 'inverter' && { also: 'mains not drawn' }),
            lead: { areaMm2: conductor.areaMm2, lengthM, fuseA, fuseKind: fuseType.kind.name },
          },
        ],
      },
    ],
    cautions: [
      `A sketch to talk over, not a plan to build by. ${cautions['fuse-at-battery']}`,
      ...(kind === 'inverter' ? [cautions['mains-wiring']] : []),
      ...(figures.continuous.value >= 60 ? [cautions['big-current']] : []),
    ],
  };
}
