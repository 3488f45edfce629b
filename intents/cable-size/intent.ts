import type { Facts, Stated } from '#rig/rig.ts';
import { ampsAtTwelve } from '../amps-at-twelve.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent, RequestContext } from '../intent.ts';
import type { Need } from '../needs.ts';
import { ratedParts } from '../rated-part.ts';
import { withWorked } from '../worked-beside.ts';
import { answerAmpacity } from './ampacity.ts';
import { answerCableSize } from './answer.ts';
import { cableAsides } from './asides-table.ts';
import { autoMm } from './auto-mm.ts';
import { type CableSize, computeCableSize, nextThicker, nextThinner } from './compute.ts';

const isCurrentKnown = (facts: Stated): boolean =>
  isSizeAlone(facts) ||
  facts.cable?.currentA !== undefined ||
  facts.inverter?.powerW !== undefined ||
  !!facts.loads?.length ||
  !!facts.chargers?.some(c => c.kind !== 'generator') ||
  !!facts.solar?.some(s => s.powerW !== undefined);
const needCurrent: Need = {
  anyOf: ['cable', 'inverter', 'loads', 'chargers', 'solar'],
  ask: 'the current or what runs on it (say “20A” or “2000W inverter”)',
  key: 'need-current',
  holds: isCurrentKnown,
};
const hasSize = ({ cable }: Stated): boolean =>
  (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm) !== undefined;
/** Only the size of a cable is told: then what it carries is asked, and the length doesn't matter. */
const isSizeAlone = (facts: Stated): boolean => hasSize(facts) && facts.cable?.lengthM === undefined;
const isLengthKnown = (facts: Stated): boolean => facts.cable?.lengthM !== undefined || hasSize(facts);
const needLength: Need = {
  anyOf: ['cable'],
  ask: 'how long the cable is, one way (say “5 m”)',
  key: 'need-length',
  holds: isLengthKnown,
};

/** "Can I go thinner?", "and one size up?": the next size sold, where the one that does was just named. */
function otherWished({ conductor }: CableSize, { parsed }: RequestContext): Facts['cable'] {
  const { words } = parsed.recognised;
  const isThinner = words.some(word => word === 'thinner' || word === 'smaller' || word === 'lighter');
  const isThicker = words.some(word => word === 'thicker' || word === 'bigger' || word === 'heavier');
  const other = isThinner ? nextThinner(conductor) : isThicker ? nextThicker(conductor) : undefined;
  if (!other) return undefined;
  return other.as === 'gauge' ? { awg: other.size } : { areaMm2: other.areaMm2 };
}

const size: Intent = defineIntent({
  name: 'cable-size',
  title: 'What cable do I need?',
  thing: 'cable',
  takes: [
    'cable',
    'inverter',
    'loads',
    'chargers',
    'solar',
    'systemVoltageV',
    'batteries',
    'arrangement',
    'volts',
    'ambientC',
  ],
  // Whatever else is known, a current told goes before it.
  alsoHangsOn: ({ cable }) => (cable?.lengthM === undefined ? [] : ['cable.currentA']),
  needs: [needCurrent, needLength],
  reply: (stated, setting) => {
    const facts = ampsAtTwelve(stated, setting.parsed.facts);
    if (isSizeAlone(facts)) return answerAmpacity(facts, setting);
    const result = computeCableSize(facts, setting);
    const other = hasSize(facts) ? undefined : otherWished(result, setting);
    if (!other) return answerCableSize(facts, result, setting);
    const told = { ...facts, cable: { ...facts.cable, ...other } };
    return answerCableSize(told, computeCableSize(told, setting), setting);
  },
});

/** What cable; what is the drop on this cable; and what people ask beside that. */
export const cableSize = withWorked(
  withAsides(size, cableAsides, (_, facts, { recalled }) => !recalled.has('cable') && isLengthKnown(facts)),
  [ratedParts, autoMm],
);
