import type { GearAsked, GearOf } from '#intents/intent.ts';
import { hasRigFigures } from '#intents/settle/maxims.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { isSameName } from '#rig/merge.ts';
import type { Rig } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isBotCalled } from '../turns/called.ts';
import { gearOf } from './gear-of.ts';
import { peopleIn, whoIn, wordsWritten } from './people.ts';

// "What did Wal say his pump took?", "who's got the 200 Ah?", "whose panel is biggest": what a chat was told.

/** What is asked of what somebody told. */
const recalling = [
  'what|how|whats did say|tell|told|said|mention|mentioned -should -right -long',
  'remind what|how|of|about|whats',
  'what|whats|how again is|was|big|whats|size|many -long',
  'what|which|whats has|does got|have|run -i -we',
  'what|whats you know|have|got|remember about|on|of',
  'has|does got|have|run -what -who -how',
];
/** What a sum would have to tell. */
const ofSum = [
  'last|lasts|lasting|longest|longer|enough|need|needs|should|cope|handle|charge|charging|full|left|right|make|makes|will|would|could|if|better',
];
const whoHas = [
  'who|whos|anyone|anybody has|got|have|runs|run|running|said|owns|own|whos -spare -lend -borrow',
];
const whoseMost = ['who|whos|whose biggest|largest|bigger|most'];
const whoseLeast = ['who|whos|whose smallest|smaller|least|tiniest'];
const selves: ReadonlySet<string> = new Set(['i', 'my', 'mine', 'ive', 'me']);

const sorts: Readonly<Record<string, keyof Rig>> = {
  battery: 'batteries',
  chemistry: 'batteries',
  solar: 'solar',
  inverter: 'inverter',
  charger: 'chargers',
};

/** What of a rig the words name: a thing, a kind of gear, a size; all of it where they name none. */
function partOf(rig: Rig, mentions: readonly Mention[]): Rig {
  const thing = mentions.find(({ kind, key }) => kind === 'thing' && !selves.has(key ?? ''));
  const sized = mentions.find(({ kind, unit }) => kind === 'amount' && (unit === 'Ah' || unit === 'W'));
  const chemistry = mentions.find(({ kind }) => kind === 'chemistry');
  const gear = mentions.find(({ kind }) => sorts[kind] !== undefined);
  const key = gear && sorts[gear.kind];
  if (thing) return { loads: rig.loads?.filter(({ name }) => isSameName(name, thing.key)) };
  if (sized?.unit === 'Ah')
    return {
      batteries: rig.batteries?.filter(
        ({ count = 1, capacityAh = 0 }) => capacityAh === sized.value || count * capacityAh === sized.value,
      ),
    };
  if (sized && key !== 'inverter')
    return {
      solar: rig.solar?.filter(
        ({ count = 1, powerW = 0 }) => powerW === sized.value || count * powerW === sized.value,
      ),
    };
  if (sized) return rig.inverter?.powerW === sized.value ? { inverter: rig.inverter } : {};
  if (chemistry) return { batteries: rig.batteries?.filter(one => one.chemistry === chemistry.key) };
  return key === undefined ? rig : { [key]: rig[key] };
}

const isThere = (rig: Rig): boolean =>
  Object.values(rig).some(part => part !== undefined && (!Array.isArray(part) || part.length > 0));

/** How big the gear is that is held against each other: Ah or Wh of batteries as Ah at 12 V, W of panels or inverter. */
function sizeOf({ batteries, solar, inverter }: Rig): number {
  const ah = (batteries ?? []).reduce(
    (sum, { count = 1, capacityAh, energyWh = 0, voltageV = 12 }) =>
      sum + count * (capacityAh === undefined ? energyWh / 12 : (capacityAh * voltageV) / 12),
    0,
  );
  const watts = (solar ?? []).reduce((sum, { count = 1, powerW = 0 }) => sum + count * powerW, 0);
  return batteries ? ah : solar ? watts : (inverter?.powerW ?? 0);
}

const namesGear = (mentions: readonly Mention[]): boolean =>
  mentions.some(
    ({ kind, unit }) => kind === 'thing' || sorts[kind] !== undefined || unit === 'Ah' || unit === 'W',
  );

/** What is asked about gear that was told, with what is known of it; undefined where nothing of that is asked. */
function askedIn(memory: Memory, message: Message, heard: Heard): GearAsked | undefined {
  const { mentions, words } = heard.recognised;
  const from = personKey(message.from);
  const toldBy = (who: string): Rig | undefined =>
    gearOf(memory, who, who === from ? ownKey(message.from, message.kind) : who);
  const knownOf = (who: string): GearOf => ({
    who,
    isOwn: who === from,
    gear: partOf(toldBy(who) ?? {}, mentions),
  });
  if (isSpotted(words, ofSum)) return undefined;
  const people = [...new Set([...peopleIn(memory), from])];
  if (namesGear(mentions) && message.kind === 'group') {
    const has = people.map(knownOf).filter(({ gear }) => isThere(gear));
    const isMost = isSpotted(words, whoseMost);
    if (isMost || isSpotted(words, whoseLeast)) {
      const sized = has.filter(({ gear }) => sizeOf(gear) > 0);
      const found = sized.toSorted((a, b) => (sizeOf(b.gear) - sizeOf(a.gear)) * (isMost ? 1 : -1));
      return found.length > 0 ? { how: 'most', found } : undefined;
    }
    const isAsked = isSpotted(words, whoHas);
    if (isAsked && (has.length > 0 || isBotCalled(heard, message))) return { how: 'who', found: has };
    if (isAsked) return undefined;
  }
  if (!isSpotted(words, recalling) || hasRigFigures(mentions)) return undefined;
  const known = new Set(people);
  const named = wordsWritten(heard.recognised)
    .map(word => whoIn(word, known))
    .find(who => who !== undefined && who !== from);
  const isOwn = words.some(word => selves.has(word));
  const who = named ?? (isOwn ? from : undefined);
  const gear = who === undefined ? undefined : toldBy(who);
  if (who === undefined || gear === undefined) return undefined;
  const rest = { who, isOwn: who === from, gear };
  return { how: 'of', found: [knownOf(who)], rest };
}

/** A message that asks what was told of gear, as one that shows it: never a sum with it. */
export function withGearAsked(memory: Memory, message: Message, heard: Heard): Heard {
  if (heard.forgetting || heard.undo || heard.isPicked || heard.held || message.onto) return heard;
  const isTold =
    heard.corrects !== undefined ||
    heard.claims.length > 1 ||
    (heard.cues.has('own-statement') && !message.text.includes('?'));
  const gearAsked = isTold ? undefined : askedIn(memory, message, heard);
  if (!gearAsked) return heard;
  const shown = { intent: 'rig', facts: {}, claims: [], removed: [], owner: undefined, options: [] } as const;
  return { ...heard, ...shown, issues: [], certainty: 1, probability: 1, isAppeal: true, gearAsked };
}
