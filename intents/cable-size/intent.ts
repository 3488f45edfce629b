import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { type Need, needs } from '../needs.ts';
import { isFirst } from '../order.ts';
import { answerAmpacity } from './ampacity.ts';
import { answerCableSize } from './answer.ts';
import { computeCableSize } from './compute.ts';

const takes = [
  'cable',
  'inverter',
  'loads',
  'chargers',
  'solar',
  'systemVoltageV',
  'batteries',
  'volts',
] as const satisfies readonly (keyof Facts)[];

const needCurrent: Need = {
  anyOf: ['cable', 'inverter', 'loads', 'chargers', 'solar'],
  ask: 'the current or what hangs on it (say “20A” or “2000W inverter”)',
  holds: facts =>
    isSizeAlone(facts) ||
    facts.cable?.currentA !== undefined ||
    facts.inverter?.powerW !== undefined ||
    !!facts.loads?.length ||
    !!facts.chargers?.some(c => c.kind !== 'generator') ||
    !!facts.solar?.some(s => s.powerW !== undefined),
};
const hasSize = ({ cable }: Facts): boolean =>
  (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm) !== undefined;
/** Only the size of a cable is told: then what it carries is asked, and the length doesn't matter. */
const isSizeAlone = (facts: Facts): boolean => hasSize(facts) && facts.cable?.lengthM === undefined;
const needLength: Need = {
  anyOf: ['cable'],
  ask: 'how long the cable is, one way (say “5 m”)',
  holds: facts => facts.cable?.lengthM !== undefined || hasSize(facts),
};

/** What cable; what is the drop on this cable. */
export const cableSize: Intent = {
  name: 'cable-size',
  title: 'What cable do I need?',
  takes,
  needs: needs(takes, [needCurrent, needLength]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const { lengthM, currentA } = facts.cable ?? {};
    const isSized = hasSize(facts);
    if (cues.has('cable')) add('speaks of cable', 3);
    if (cues.has('ask-drop')) add('asks for the drop', 4);
    if (isSized) add('a size of cable', 2);
    if (isSized && lengthM !== undefined) add('a size and a length', 2);
    if (cues.has('auto-cable') || cues.has('bs-gauge')) add('speaks of gauges', 2);
    if (lengthM !== undefined) add('a length', 2);
    if (lengthM !== undefined && currentA !== undefined) add('a length and a current', 1);
    if (lengthM !== undefined && cues.has('ask-what-size')) add('asks what size, for a length', 1);
    if (cues.has('cable') && cues.has('ask-what-size')) add('asks what cable', 1);
    if (cues.has('fuse'))
      add('speaks of a fuse', isFirst(said, 'fuse', 'cable') && !cues.has('ask-drop') ? -7 : -4);
    if (cues.has('ask-how-long') && lengthM === undefined) add('asks how long', -2);
    if (said.claims.length > 1 || cues.has('ask-who-is-right')) add('an argument', -4);
    if (cues.has('learn')) add('wants a lesson', -4);
    if (cues.has('isolator') && cues.has('dcdc')) add('isolator or DC-DC', -3);
    return found;
  },
  reply: (facts, setting) =>
    isSizeAlone(facts)
      ? answerAmpacity(facts)
      : answerCableSize(facts, computeCableSize(facts, setting), setting),
};
