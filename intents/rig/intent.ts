import type { Cue } from '#language/said.ts';
import type { Evidence, Intent } from '../intent.ts';
import { needs } from '../needs.ts';
import { answerRig } from './answer.ts';
import { changeRig, gearOf, hasGear } from './compute.ts';

/** My rig is …; show, change or forget it. Gear told without any question is kept as well. */
export const rig: Intent = {
  name: 'rig',
  title: 'Your rig',
  takes: [],
  needs: needs([], []),
  asks: said => {
    const { cues } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const isMeant = (['rig', 'save', 'add', 'change', 'own-statement'] as const).some(cue => cues.has(cue));
    // "Who watches telly on holiday": a thing named in passing is no gear to keep.
    const tells = hasGear(gearOf(isMeant ? said : { ...said, bareLoads: [] }));
    const isSlip = said.corrections.length > 0 && ![...cues].some(cue => cue.startsWith('ask-'));
    if (isSlip) add('puts a number right', 2.5);
    const asks = [...cues].some(cue => cue.startsWith('ask-'));
    // "How much do two panels put in" adds nothing to a rig.
    const changes = !asks && (said.removed.length > 0 || cues.has('add') || cues.has('change'));
    if (changes && said.removed.length > 0 && cues.has('remove')) add('takes gear out', 1);
    if (cues.has('forget') && cues.has('everything')) return found;
    if (cues.has('save') && tells) add('asks to keep gear', 5);
    if (cues.has('show') && cues.has('rig')) add('asks to see the rig', 5);
    const isShown = cues.has('rig') && cues.has('ask-what-is') && said.owner !== undefined && !tells;
    if (isShown) add("asks what somebody's rig is", 9);
    if (cues.has('rig') && (cues.has('forget') || changes)) add('changes the rig', 4);
    if (cues.has('rig') && tells) add('says rig and tells gear', 3);
    if (changes && (tells || said.removed.length > 0)) add('adds, changes or takes out gear', 2.5);
    if (cues.has('own-statement') && tells && !asks) add('says what they have', 3);
    if (tells) add('tells gear', 2.2);
    if (cues.has('statement') && tells) add('a plain statement', 1);
    // "The booster gives 20 A": of no sun.
    const isAsking = (cue: Cue): boolean =>
      cue.startsWith('ask-') && (cue !== 'ask-yield' || cues.has('solar') || cues.has('sun'));
    for (const cue of said.cues) if (isAsking(cue)) add('asks something', -4);
    if (cues.has('question-mark') && !cues.has('show')) add('ends in a question mark', -3);
    if (said.facts.durationH !== undefined) add('says for how long', -2);
    if (said.claims.length > 0) add('tells claims', -3);
    return found;
  },
  reply: (_facts, setting) => answerRig(changeRig(setting), setting),
};
