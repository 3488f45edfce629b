import { cools } from '#intents/facts.ts';
import type { Stated, StatedBattery, StatedLoad, StatedSolar } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';

// "Three of them?", "half that battery?": how many, or how much, of what the question has.

const them: ReadonlySet<string> = new Set(['them', 'those', 'these', 'em']);
const mostWords = 8;

/** How many of something spoken of a line asks for, where it says that by "of them". */
function countIn({ recognised: { words, mentions } }: Heard): number | undefined {
  const number = mentions.find(
    ({ kind, from, to }) =>
      kind === 'number' &&
      ((words[to] === 'of' && them.has(words[to + 1] ?? '')) ||
        // "Back to two."
        (words[from - 2] === 'back' && words[from - 1] === 'to')),
  );
  return number?.kind === 'number' && Number.isInteger(number.value) && number.value > 0
    ? number.value
    : undefined;
}

/** Which thing of a question "them" are: those of which there are several, else the one thing, unless one has but one of its kind. */
function thingMeant({ facts }: Frame): StatedLoad | undefined {
  const loads = facts.loads ?? [];
  const several = loads.findLast(
    ({ name, count = 1 }) => count > 1 || (name.length > 3 && name.endsWith('s')),
  );
  const [only] = loads;
  return several ?? (loads.length === 1 && only && !cools(only.name) ? only : undefined);
}

const halved = (value: number | undefined): number | undefined =>
  value === undefined ? undefined : value / 2;

type Sized = 'batteries' | 'solar' | 'inverter';
const sorts: Readonly<Record<string, Sized>> = {
  battery: 'batteries',
  station: 'batteries',
  solar: 'solar',
  inverter: 'inverter',
};

const halfBattery = ({ capacityAh, energyWh, ...rest }: StatedBattery): StatedBattery => ({
  ...rest,
  ...(capacityAh !== undefined && { capacityAh: capacityAh / 2 }),
  ...(energyWh !== undefined && { energyWh: energyWh / 2 }),
});
const halfPanel = ({ powerW, ...rest }: StatedSolar): StatedSolar => ({
  ...rest,
  ...(powerW !== undefined && { powerW: powerW / 2 }),
});

/** "Half that battery", "half the panels": the gear of the question, half as big. */
function halfIn({ recognised: { words, mentions } }: Heard, { facts }: Frame): Stated | undefined {
  const at = words.findIndex(
    (word, i) => (word === '' || word === 'half') && ['that', 'the', 'this'].includes(words[i + 1] ?? ''),
  );
  const isHalf = mentions.some(({ from, text }) => from === at && text.toLowerCase() === 'half');
  if (at < 0 || !isHalf) return undefined;
  const named = mentions.find(({ kind, from }) => from === at + 2 && sorts[kind] !== undefined);
  const there = (['batteries', 'solar', 'inverter'] as const).filter(key => facts[key] !== undefined);
  const isPlain = words[at + 2] === undefined || ['size', '?', '.'].includes(words[at + 2] ?? '');
  const key = named ? sorts[named.kind] : isPlain && there.length === 1 ? there[0] : undefined;
  if (key === 'batteries' && facts.batteries) return { batteries: facts.batteries.map(halfBattery) };
  if (key === 'solar' && facts.solar) return { solar: facts.solar.map(halfPanel) };
  if (key === 'inverter' && facts.inverter)
    return { inverter: { ...facts.inverter, powerW: halved(facts.inverter.powerW) } };
  return undefined;
}

/** A line that tells how many of them, or half of what the question has, as a turn of that question. */
export function ofThem(memory: Memory, message: Message, heard: Heard): Heard {
  if (heard.words > mostWords) return heard;
  const { frames } = memory;
  const frame = message.onto ?? ownFrame(frames, message.from) ?? frames.at(-1);
  if (!frame || undemanding.has(frame.intent)) return heard;
  const count = countIn(heard);
  const thing = count === undefined ? undefined : thingMeant(frame);
  const facts = thing ? { loads: [{ name: thing.name, count }] } : halfIn(heard, frame);
  if (!facts) return heard;
  const { facts: told } = heard;
  // What else the line tells stays: "two of them, for 10 hours".
  const { loads: _l, batteries: _b, solar: _s, inverter: _i, depthOfDischargePercent: _d, ...rest } = told;
  const { durationH, ...others } = rest;
  const isEach = thing?.hoursPerDay !== undefined && durationH !== undefined && durationH <= 24;
  const timed = isEach && thing ? { loads: [{ name: thing.name, count, hoursPerDay: durationH }] } : facts;
  return {
    ...heard,
    intent: frame.intent,
    facts: { ...(isEach ? others : rest), ...(timed as Stated) },
    claims: [],
    options: [],
    certainty: leastSure,
  };
}
