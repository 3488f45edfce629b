import type { IntentName } from '#answer/answer.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import type { Frame } from '../memory.ts';
import { undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';
import { readingsOf } from '../unsure/two-readings.ts';
import { asksItself } from './lean.ts';
import { sideAskedIn } from './side-asked.ts';

// Short questions about the answer before, which name nothing themselves.

/** Words that may stand beside a "why" that asks after the answer itself. */
const besideWhy: ReadonlySet<string> = new Set(
  'why how come is that it so not only one much little long short big small thick thin heavy slow high low many few less more the though tho but and ok hm hmm really ? bot'.split(
    ' ',
  ),
);

/** "Why?", "how come so little?": of what was just answered. */
export const asksWhyAlone = ({ cues, facts, recognised: { words } }: Heard): boolean =>
  cues.has('ask-why') && Object.keys(facts).length === 0 && words.every(word => besideWhy.has(word));

const mostBareWords = 8;

/** Whether a short line asks and names nothing: what it is about was said before. */
const isBareQuestion = ({ facts, words, owner }: Heard): boolean =>
  Object.keys(facts).length === 0 && words <= mostBareWords && owner === undefined;

/** "How many minutes?" after what an inverter takes from the battery: how long that runs it. */
function howLongOf(own: Frame, heard: Heard): IntentName | undefined {
  const isOf = own.intent === 'inverter-check' && own.facts.batteries && own.facts.loads;
  const isLong = heard.cues.has('ask-how-long') && heard.intent === 'inverter-check';
  return isOf && isLong && isBareQuestion(heard) ? 'run-time' : undefined;
}

/** "And the cable?" after a fuse, "which fuse?" after a cable: of the same circuit. */
function itsCable(own: Frame, heard: Heard): IntentName | undefined {
  const { cues, intent } = heard;
  if (intent !== own.intent || !isBareQuestion(heard) || asksItself(heard)) return undefined;
  if (own.intent === 'fuse-size' && cues.has('cable') && !cues.has('fuse')) return 'cable-size';
  return own.intent === 'cable-size' && cues.has('fuse') && !cues.has('cable') ? 'fuse-size' : undefined;
}

/** Questions of a size, each with those after which "how big, then?" asks it. */
const sizes: Partial<Record<IntentName, readonly IntentName[]>> = {
  'solar-size': ['solar-size', 'solar-yield'],
  'battery-size': ['battery-size', 'run-time', 'trip', 'energy-budget'],
  'cable-size': ['cable-size'],
  'fuse-size': ['fuse-size'],
  'inverter-check': ['inverter-check'],
  generator: ['generator'],
};
const things: readonly string[] = 'battery solar inverter cable fuse generator charger controller load'.split(
  ' ',
);

/** "How big do I need then?", naming nothing: of what the question before was about. */
function sizeOf(own: Frame, heard: Heard): IntentName | undefined {
  const isSize = heard.cues.has('ask-what-size') && sizes[heard.intent as IntentName] !== undefined;
  if (!isSize || heard.certainty >= leastSure || !isBareQuestion(heard)) return undefined;
  if (sideAskedIn(heard) === 'change') return undefined;
  if (things.some(thing => heard.cues.has(thing as never))) return undefined;
  const found = Object.entries(sizes).find(([, after]) => after?.includes(own.intent));
  return found?.[0] as IntentName | undefined;
}

const pointing: ReadonlySet<string> = new Set('that thats it its this'.split(' '));

/** "What is that in amps?", where reading is torn between a unit's question and the one before: of what was just answered. */
function inUnitOf(own: Frame, heard: Heard): IntentName | undefined {
  const isTorn = heard.certainty < leastSure && isBareQuestion(heard);
  if (!isTorn || !heard.recognised.words.some(word => pointing.has(word))) return undefined;
  const asked = readingsOf(heard)
    .slice(0, 2)
    .map(({ intent }) => intent);
  return asked.includes('convert') && asked.includes(own.intent) ? own.intent : undefined;
}

/** Words that ask for the amps of an answer, on the battery's side. */
const ofBatterySide: readonly string[] = [
  'amps|amp|current how_many|how_much|what|whats|which that|it|this|battery|draw|draws|drawing|pull|pulls|pulling -fuse -cable -solar -panel -charger',
  'amps|amp|current off|from|out_of battery -fuse -cable -charger',
];

/** Words beside "12 V" that ask for amps there. */
const atTwelve: readonly string[] = ['amps|amp|current at|on|side|from -fuse -cable -solar -panel -charger'];
const mostSideWords = 13;

/** "How many amps is that off the battery?" after an inverter's answer, whatever unit's question it looks like. */
function batterySideOf(of: Frame, heard: Heard): IntentName | undefined {
  const { facts, recognised, words, corrects } = heard;
  if (of.intent !== 'inverter-check' || of.asked !== undefined || of.facts.loads === undefined)
    return undefined;
  // "On the 12 V side" tells nothing new.
  const { systemVoltageV, volts, ...others } = facts;
  const atV = systemVoltageV ?? volts;
  const isSame = atV === undefined || atV === (of.facts.systemVoltageV ?? tradeV);
  const figures = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const isBare = Object.keys(others).length === 0 && isSame && !corrects && words <= mostSideWords;
  if (!isBare || figures.some(({ value }) => value !== atV)) return undefined;
  const isOpen = besideSums.has(heard.intent) || heard.intent === 'convert' || heard.certainty < leastSure;
  const isOfIt = heard.intent === of.intent && atV !== undefined;
  const spots = atV === undefined ? ofBatterySide : [...ofBatterySide, ...atTwelve];
  return (isOpen || isOfIt) && isSpotted(recognised.words, spots) ? of.intent : undefined;
}
const tradeV = 12;

/** Questions of sun on panels. */
const ofSun: readonly IntentName[] = ['solar-yield', 'solar-size', 'trip', 'charge-time', 'rig-check'];
/** Questions that judge a size that was told. */
const ofSizes: readonly IntentName[] = ['cable-size', 'fuse-size', 'inverter-check'];
const thingOf: Readonly<Record<string, IntentName>> = {
  cable: 'cable-size',
  wire: 'cable-size',
  gauge: 'cable-size',
  fuse: 'fuse-size',
  inverter: 'inverter-check',
};
/** Readings that leave what such a line is of to the answer before. */
const besideSums: ReadonlySet<string> = new Set(['none', 'unclear', 'term', 'settle', 'compare', 'learn']);

/** Another side of the answer: "how many of those would flatten it?", "what angle?", "what should I use then?". */
export function anotherSideOf(own: Frame, heard: Heard): IntentName | undefined {
  const isOpen = besideSums.has(heard.intent) || heard.certainty < leastSure;
  switch (sideAskedIn(heard)) {
    case 'goes':
      if (own.intent === 'inverter-check' && own.facts.batteries && own.facts.loads) return 'run-time';
      return isOpen && own.intent === 'run-time' ? own.intent : undefined;
    case 'angle':
      return ofSun.includes(own.intent) && (own.facts.solar || own.intent.startsWith('solar'))
        ? 'solar-yield'
        : undefined;
    case 'instead':
      if (heard.recognised.words.some(word => (thingOf[word] ?? own.intent) !== own.intent)) return undefined;
      // What a time wanted takes is told with its no.
      return ofSizes.includes(own.intent) || (own.intent === 'run-time' && own.facts.durationH !== undefined)
        ? own.intent
        : undefined;
    case 'change':
      return isOpen && own.onto !== undefined && !undemanding.has(own.intent) ? own.intent : undefined;
    case 'apart':
    case 'rivals':
      return isOpen && !undemanding.has(own.intent) ? own.intent : undefined;
    case undefined:
      return undefined;
  }
}

/** "Which of them lasts longer?" of somebody who has asked nothing: of the chat's question. */
export const ofTheirAnswers = (last: Frame, heard: Heard): IntentName | undefined =>
  sideAskedIn(heard) === 'rivals' ? anotherSideOf(last, heard) : batterySideOf(last, heard);

/** The question that a short line asks of one's own answer before; undefined where it asks none of these. */
export const ofAnswerBefore = (own: Frame, heard: Heard): IntentName | undefined =>
  howLongOf(own, heard) ??
  itsCable(own, heard) ??
  sizeOf(own, heard) ??
  inUnitOf(own, heard) ??
  batterySideOf(own, heard) ??
  anotherSideOf(own, heard);
