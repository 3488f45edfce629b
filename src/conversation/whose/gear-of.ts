import { gearIn, hasGear } from '#rig/gear.ts';
import { hasDraw, isSameName } from '#rig/merge.ts';
import type { Rig, Stated, StatedLoad } from '#rig/rig.ts';
import type { Frame, Memory } from '../memory.ts';
import { lentInFrame } from './origins.ts';

/** The questions of a person, the newest first, each without what it took from somebody else. */
const ownQuestions = (frames: readonly Frame[], who: string): Stated[] =>
  frames
    .filter(frame => frame.from === who)
    .map(frame => ownPart(frame))
    .reverse();

/** The facts of a question that are its asker's own. */
function ownPart(frame: Frame): Stated {
  const lent = lentInFrame(frame, frame.from);
  const isLent = (key: string): boolean => lent.some(({ facts }) => key in facts);
  return Object.fromEntries(Object.entries(frame.facts).filter(([key]) => !isLent(key))) as Stated;
}

/** What is known of a person's gear: the rig told, and of what that leaves open their own questions, the newest first. */
export function gearOf({ rigs, frames }: Memory, who: string, rigKey = who): Rig | undefined {
  const oldestFirst = ownQuestions(frames, who).reverse().map(gearIn);
  const gear: Rig = Object.assign({}, ...oldestFirst);
  const whole = { ...gear, ...rigs[rigKey] };
  return hasGear(whole) ? whole : undefined;
}

/** Whether one name is the other with more said of it: "travel kettle" and "kettle". */
const isKind = (a: string, b: string): boolean => a.endsWith(` ${b}`) || b.endsWith(` ${a}`);

/** A thing of a name among some facts, with its figures. */
export function thingIn(facts: Stated | undefined, name: string): StatedLoad | undefined {
  const told = facts?.loads?.filter(hasDraw) ?? [];
  return told.find(load => isSameName(load.name, name)) ?? told.find(load => isKind(load.name, name));
}

/** A person's thing of a name, with its figures. */
export function thingOf(memory: Memory, who: string, name: string, rigKey = who): StatedLoad | undefined {
  const loads = [memory.rigs[rigKey], ...ownQuestions(memory.frames, who)].flatMap(
    facts => facts?.loads ?? [],
  );
  return thingIn({ loads }, name);
}
