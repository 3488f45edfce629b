import type { Stated } from '#rig/rig.ts';
import { answerAside, asideIn, asideOf, needsBeside } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import type { Need } from '../needs.ts';
import { answerAmpacity } from './ampacity.ts';
import { answerCableSize } from './answer.ts';
import { cableAsides } from './asides-table.ts';
import { computeCableSize } from './compute.ts';

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
  holds: isLengthKnown,
};

/** From a battery to gear at the other end of a wagon or van, one way, m: common practice. */
const usualLengthM = 5;
/** The same to an inverter, which sits beside its battery, m. */
const inverterLengthM = 1.5;
const usualLength = ({ inverter, loads = [] }: Stated): number =>
  inverter?.powerW !== undefined || loads.some(({ supply }) => supply === 'ac')
    ? inverterLengthM
    : usualLengthM;

/** What cable; what is the drop on this cable. */
export const cableSize: Intent = defineIntent({
  name: 'cable-size',
  title: 'What cable do I need?',
  takes: [
    'cable',
    'inverter',
    'loads',
    'chargers',
    'solar',
    'systemVoltageV',
    'batteries',
    'volts',
    'ambientC',
  ],
  // Whatever else is known, a current told goes before it.
  alsoHangsOn: ({ cable }) => (cable?.lengthM === undefined ? [] : ['cable.currentA']),
  needs: [needCurrent, needLength],
  // A usual length gives a first size; what the length is changes it most.
  guess: (told, setting) => {
    if (!isCurrentKnown(told) || isLengthKnown(told)) return undefined;
    const lengthM = usualLength(told);
    const cable = { ...told.cable, lengthM };
    const ready = cableSize.needs.safeParse({ ...told, cable }).data;
    const reply = ready && answerCableSize(ready, computeCableSize(ready, setting), setting);
    const taken = `I took ${lengthM} m, one way. How long is yours? That changes it most.`;
    return reply && { ...reply, lines: [taken, ...(reply.lines ?? []).slice(0, 2)], next: [] };
  },
  subjectIn: words => asideIn(words, cableAsides)?.name,
  needsOn: needsBeside(cableAsides, [needCurrent, needLength]),
  reply: (facts, setting) => {
    const hasOwnFigures =
      !setting.recalled.has('cable') && (hasSize(facts) || facts.cable?.lengthM !== undefined);
    const canSum = isCurrentKnown(facts) && isLengthKnown(facts);
    const aside = asideOf(cableAsides, setting, { hasOwnFigures, canSum });
    if (aside) return answerAside(aside, facts);
    return isSizeAlone(facts)
      ? answerAmpacity(facts, setting)
      : answerCableSize(facts, computeCableSize(facts, setting), setting);
  },
});
