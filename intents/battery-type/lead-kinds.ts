import type { Reply } from '#answer/reply.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { chemistryName } from '../words.ts';
import { lifeOf } from './compute.ts';

type Lead = 'agm' | 'gel' | 'flooded';

/** What sets the kinds of lead-acid apart. Common practice. */
const says: Readonly<Record<Lead, string>> = {
  agm: 'AGM: sealed, takes charge fast and gives big currents; suits most chargers.',
  gel: 'Gel: sealed, a little more cycles; charge it slowly, with a gel setting (14.1 to 14.2 V), never more.',
  flooded: 'Wet: cheapest; needs water, stays upright, and a box vented to the outside.',
};

const isLead = (kind: Chemistry | undefined): kind is Lead => kind !== undefined && kind in says;

/** Words for kinds of lead-acid held against each other, or for the wet kind by itself. Undefined where lithium is one of them. */
export function answerLeadKinds({ batteries = [] }: Facts): Reply | undefined {
  const told = [...new Set(batteries.map(({ chemistry }) => chemistry))];
  const kinds = told.filter(isLead);
  const isOther = told.some(kind => !isLead(kind));
  const [first] = kinds;
  if (isOther || first === undefined || (kinds.length < 2 && first === 'agm')) return undefined;
  const cycles = (kind: Lead): string => decimals(lifeOf(kind).cycles, 0);
  const headline =
    kinds.length > 1
      ? `AGM for most${kinds.includes('gel') ? ': gel needs a gentler charger' : ''}${kinds.includes('flooded') ? `${kinds.includes('gel') ? ', and' : ':'} a wet one water and a vent` : ''}.`
      : first === 'gel'
        ? 'Gel is as good as AGM where its charger suits; with a strong alternator or inverter AGM is better.'
        : 'A wet one is fine where cost counts most; sealed AGM asks less of you.';
  const shown: readonly Lead[] = kinds.length > 1 ? kinds : ['agm', first];
  return {
    headline,
    lines: [
      ...shown.map(kind => says[kind]),
      `Cycles to half: ${shown.map(kind => `${chemistryName(kind)} about ${cycles(kind)}`).join(', ')}. Half of the label is for use in each.`,
    ].slice(0, 4),
    verdict: null,
    cautions: kinds.includes('flooded') ? ['battery-gas'] : [],
    next: ['agm or lithium?'],
  };
}
