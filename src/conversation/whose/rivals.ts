import { without } from '#basics/without.ts';
import { factsOf } from '#intents/facts.ts';
import { hasUse } from '#intents/use.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Rig, Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { gearOf } from './gear-of.ts';
import { peopleIn, whoIn, wordsWritten } from './people.ts';

// "Who lasts longer, Jo or Stu?": two people's gear side by side.

const self: ReadonlySet<string> = new Set(['mine', 'mines', 'me', 'my']);

/** The people that a message names side by side, by key, the writer among them; "me" for that one. */
function namedIn(memory: Memory, { from }: Message, heard: Heard): string[] {
  const known = new Set(peopleIn(memory));
  const names = wordsWritten(heard.recognised).flatMap(word => {
    const name = self.has(word) ? 'me' : whoIn(word, known);
    return name === undefined ? [] : [name === personKey(from) ? 'me' : name];
  });
  return [...new Set(names)];
}

/** What is known of a person's gear, "me" being the writer. */
const gearFor = (memory: Memory, { from, kind }: Message, who: string): Rig | undefined =>
  who === 'me' ? gearOf(memory, personKey(from), ownKey(from, kind)) : gearOf(memory, who);

/** More rigs than these nobody holds against each other. */
const mostRivals = 4;

/** The people of a chat whose gear is told, the writer among them as "me"; none where there are too many. */
function withRigs(memory: Memory, message: Message, told: Stated): string[] {
  const own = personKey(message.from);
  const people = peopleIn(memory).map(name => (name === own ? 'me' : name));
  const whole = people.filter(who => isWholeRig(onSame(gearFor(memory, message, who), told)));
  return whole.length <= mostRivals ? whole : [];
}

const isWholeRig = (rig: Rig | undefined): boolean => rig?.batteries !== undefined && hasUse(factsOf(rig));

/** "If we all run a 45 W fridge": a rig with what is told to run on each of them. */
const onSame = (rig: Rig | undefined, { loads }: Stated): Rig | undefined =>
  rig && loads ? { ...without(rig, 'dailyUseAh', 'dailyUseWh'), loads } : rig;

const ofTime: readonly Cue[] = ['last', 'ask-how-long'];

/** A message that holds two people's gear against each other, as the question of how long each lasts. */
export function betweenRivals(memory: Memory, message: Message, heard: Heard): Heard {
  const isTold = Object.keys(heard.facts).some(key => key !== 'durationH' && key !== 'loads');
  // How long each lasts is meant only where the words say so: people are held against each other in many ways.
  const isOfTime = ofTime.some(cue => heard.cues.has(cue)) || heard.recognised.words.includes('outlast');
  const isComparing = heard.intent === 'compare' && !isTold && isOfTime;
  if (!heard.cues.has('ask-whose') || !(isComparing || heard.intent === 'run-time')) return heard;
  const named = namedIn(memory, message, heard).filter(who => gearFor(memory, message, who) !== undefined);
  // "Who lasts longest?" of those whose rigs are known names them.
  const rivals =
    named.length === 0 && heard.owner === undefined ? withRigs(memory, message, heard.facts) : named;
  if (rivals.length < 2) return heard;
  const rivalry = isComparing && ({ isRivalry: true } as const);
  return {
    ...heard,
    ...rivalry,
    intent: 'run-time',
    owner: rivals.find(who => who !== 'me'),
    owners: rivals,
    options: [],
    certainty: 1,
  };
}

/** The rigs of a chat with those of whoever is named beside another and has only asked of theirs. */
export function rigsWith(memory: Memory, message: Message, { owners, facts }: Heard): Memory['rigs'] {
  if (owners.length < 2) return memory.rigs;
  const own = ownKey(message.from, message.kind);
  const rigs: Memory['rigs'] = Object.assign(Object.create(null), memory.rigs);
  for (const who of owners) {
    const key = who === 'me' ? own : who;
    const gear = onSame(rigs[key] ?? gearFor(memory, message, who), facts);
    if (gear) rigs[key] = gear;
  }
  return rigs;
}
