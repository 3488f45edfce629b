import { without } from '#basics/without.ts';
import type { Intent } from '#intents/intent.ts';
import { isSetup } from '#intents/needs.ts';
import { gearIn } from '#rig/gear.ts';
import { mergeFacts, removeFrom } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import { isDrawTold, restNow, stillTold, withoutUse } from '../answering/live.ts';
import type { Heard } from '../hear.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isWhole, type Lean } from '../turns/lean.ts';
import { heardBy, lentBy } from '../turns/lent-by.ts';
import { gearOf } from '../whose/gear-of.ts';
import { ownKey, personKey, type rigFor } from './recall.ts';

/** Some of the facts. */
export function pick(facts: Stated, keys: readonly (keyof Stated)[]): Stated {
  const out: Record<string, unknown> = {};
  for (const key of keys) if (facts[key] !== undefined) out[key] = facts[key];
  return out as Stated;
}

/** Whose rig a question went by. */
export const rigOf = ({ owner, from }: Frame): string => owner ?? from;

/** What a question before had from a rig, as that rig is now. */
function renewed({ rigs }: Memory, lent: Stated | undefined, frame: Frame | undefined): Stated | undefined {
  const rig = frame && rigs[rigOf(frame)];
  if (!lent || !rig) return lent;
  // What it took from somebody's question stays as that person told it.
  const taken = new Set(
    (frame.lent ?? []).flatMap(({ who, facts }) => (who === frame.owner ? [] : Object.keys(facts))),
  );
  const keys = ((frame.recalled ?? []) as (keyof Stated)[]).filter(key => !taken.has(key));
  return {
    ...lent,
    ...pick(
      rig,
      keys.filter(key => lent[key] !== undefined),
    ),
  };
}

/** "And on my own?": without what one's own question had from others, of which one's own takes the place. */
function withoutLent(
  memory: Memory,
  facts: Stated | undefined,
  { frame }: Lean,
  heard: Heard,
  { from, kind }: Message,
): Stated | undefined {
  if (!facts || !frame?.lent || heard.owner !== 'me' || frame.from !== personKey(from)) return facts;
  const own = gearOf(memory, personKey(from), ownKey(from, kind)) ?? {};
  const lent = frame.lent.flatMap(({ facts: theirs }) => Object.keys(theirs));
  const gone = new Set(lent.filter(key => key in own));
  return Object.fromEntries(Object.entries(facts).filter(([key]) => !gone.has(key))) as Stated;
}

/** What the talk lends to a question, of readings what still holds; and whether amps stand for the draw. */
export function remembered(
  memory: Memory,
  message: Message,
  heard: Heard,
  lean: Lean,
  rig: Stated | undefined,
): { readonly lent?: Stated; readonly passing?: Stated; readonly isDraw: boolean } {
  const { frame } = lean;
  const { at, from } = message;
  const now = at.getTime();
  const ageMs = frame ? now - (frame.readAt ?? frame.at) : 0;
  const rest = frame && restNow(frame.facts, ageMs, heard);
  // "What about mine, it's a 120?" of who has told no rig yet: the same things run on it.
  const isOfMine = rig === undefined && heard.owner === 'me' && heard.facts.batteries !== undefined;
  const gear = isOfMine ? gearIn(heard.facts) : rig;
  const all = withoutLent(memory, lentBy(lean, heard.owner, gear, rest), lean, heard, message);
  const lent = stillTold(renewed(memory, all, frame), ageMs, heard);
  // In somebody else's question one's own days and readings are not meant.
  const isTheirs =
    frame !== undefined &&
    frame.from !== personKey(from) &&
    lean.extent === 'all' &&
    heard.owner !== undefined;
  const said = heardBy(memory.passing, memory.passingFrom, isTheirs ? frame.from : personKey(from));
  const passing = stillTold(said, now - (memory.passingAt ?? now), heard);
  const amps = [heard.facts, lent, passing].find(one => one?.netCurrentA !== undefined)?.netCurrentA;
  const isDraw = amps !== undefined && isDrawTold(amps, [heard.facts, lent, rig], at);
  // What flows now is not of the loads told before.
  return { lent: isDraw && lent ? withoutUse(lent) : lent, passing, isDraw };
}

/**
 * What of the rig spoken of fills in a question. Somebody else's fills in only what can't be answered without; where a
 * message tells its own use and its own battery, a rig adds where and when, and no more.
 */
export function rigFilling(
  rig: ReturnType<typeof rigFor>,
  { owner, removed }: Heard,
  { from, kind }: Message,
  { intent, told, isTurn }: { readonly intent: Intent; readonly told: Stated; readonly isTurn: boolean },
): Stated | undefined {
  if (!rig) return undefined;
  const isOthers = rig.key !== '' && rig.key !== ownKey(from, kind);
  if (isOthers && owner === undefined && isWhole(intent, told)) return undefined;
  return isSetup(told) && !isTurn
    ? lentBy({ frame: { facts: rig.rig } as Frame, extent: 'circumstances' }, undefined)
    : removeFrom(rig.rig, removed);
}

/** What of a rig fills in a question as it is: what was taken out of it there is not looked up again for a turn. */
export const wholeIn =
  (rig: Stated | undefined, filling: Stated | undefined) =>
  (key: keyof Stated): boolean =>
    rig?.[key] === undefined || rig[key] === filling?.[key];

const joining: ReadonlySet<string> = new Set(['and', 'plus']);

/** Whether what is told comes on top of what there is: "if I add a fan", "a heater as well", "and the heater". */
export const saysMore = ({ cues, recognised: { words } }: Heard): boolean =>
  cues.has('add') ||
  joining.has(words[0] ?? '') ||
  words.some((word, at) => word === 'also' || (word === 'well' && words[at - 1] === 'as'));

/** Loads told on top of those of a rig, or of a use that was told of it as one number. */
export function withMore(rig: Stated, told: Stated): Stated {
  if (!told.loads) return told;
  if (rig.loads) return { ...told, ...mergeFacts(pick(rig, ['loads']), told, 'add') };
  const { dailyUseAh: chargeAhPerDay, dailyUseWh: energyWhPerDay } = rig;
  if (chargeAhPerDay === undefined && energyWhPerDay === undefined) return told;
  const rest = chargeAhPerDay === undefined ? { energyWhPerDay } : { chargeAhPerDay };
  return { ...told, loads: [{ name: 'all else', ...rest }, ...told.loads] };
}

/** What fills in a question, the first first. A charger told in passing has no amps: one that is known goes before it. */
export function sourcesInOrder(
  passing: Stated | undefined,
  gear: readonly (Stated | undefined)[],
  isOfRig: boolean,
): (Stated | undefined)[] {
  const plain = passing && without(passing, 'chargers');
  const last = passing?.chargers && { chargers: passing.chargers };
  return [...(isOfRig ? [...gear, plain] : [plain, ...gear]), last];
}
