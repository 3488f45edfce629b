import { intentNamed } from '#intents';
import type { Cue, Said } from '#language/said.ts';
import type { MergeMode } from '#rig/merge.ts';
import { correct, isSameName, mergeBatteries, mergeFacts, removeFrom } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import type { Last } from './memory.ts';

const turns: readonly Cue[] = ['what-if', 'make-it', 'and-with', 'without', 'correction', 'same-again'];
/** Stated that can't start a question but can turn one: said alone they change the one before. */
const turning: readonly (keyof Stated)[] = [
  'durationH',
  'month',
  'sky',
  'shade',
  'place',
  'latitudeDeg',
  'longitudeDeg',
  'ambientC',
  'mount',
  'peakSunHours',
  'drivingHoursPerDay',
  'drivingPlanH',
  'targetChargePercent',
  'depthOfDischargePercent',
  'without',
  'skyLastDays',
  'voltsTaken',
];
const asking: readonly Cue[] = [
  'ask-how-long',
  'ask-what-size',
  'ask-how-much',
  'ask-which',
  'ask-what-is',
  'ask-who-is-right',
  'ask-whose',
  'ask-drop',
  'ask-charge-level',
  'ask-yield',
  'ask-total',
  'ask-lowest',
  'ask-crank',
  'ask-compare',
];

export const isAsking = (said: Said): boolean => asking.some(cue => said.cues.has(cue));

/** Words of somebody who tells what they have, and turns nothing. */
const telling: readonly Cue[] = ['rig', 'save', 'show', 'own-statement', 'mine', 'forget', 'change'];
const mostWordsOfCheck = 6;
/** "And 3?", "what about 5 then": a number alone turns the question before. */
const mostWordsOfNumber = 5;
/** Longer messages stand for themselves. */
const mostWords = 12;

/** What the question before takes; a run time may get sun and driving as well, and is a trip then. */
const takenBy = (last: Last): readonly (keyof Stated)[] => [
  ...intentNamed(last.intent).takes,
  ...(last.intent === 'run-time' ? intentNamed('trip').takes : []),
  ...turning,
];

/** "Agm", "pwm controller", "add the lights", "take the freezer off", after a question that takes such a thing. */
function turnsGear(said: Said, last: Last): boolean {
  const keys = Object.keys(said.facts) as (keyof Stated)[];
  const isShort = said.words <= mostWords && said.claims.length === 0;
  if (!isShort || isAsking(said)) return false;
  // "I have measured it": a cable's length is nothing that one has.
  const isOfCable = keys.length === 1 && keys[0] === 'cable';
  if (!isOfCable && telling.some(cue => said.cues.has(cue))) return false;
  if (keys.length === 0)
    return said.removed.some(name => !!last.facts.loads?.some(l => isSameName(l.name, name)));
  const taken = takenBy(last);
  return keys.every(key => taken.includes(key));
}

/** Does the message only turn the question before: "what if lithium", "make it 5 days", "75 not 57"? */
export function isFollowUp(said: Said, last: Last | undefined): boolean {
  if (!last) return false;
  if (said.corrections.length > 0) return true;
  const isNumber = said.numbers.length === 1 && said.words <= mostWordsOfNumber;
  if (isNumber && said.loose.length === 0 && Object.keys(said.facts).length === 0 && !isAsking(said))
    return true;
  if (last.intent === 'convert' && said.words <= mostWordsOfNumber + 2 && !isAsking(said)) return true;
  const isNothing = Object.keys(said.facts).length === 0 && said.bareLoads.length === 0;
  const isLoose = said.loose.length === 1 && isNothing;
  if (isLoose && said.words <= mostWordsOfNumber + 1 && !isAsking(said) && said.claims.length === 0)
    return true;
  const isSupply = said.cues.has('mains') && isNothing && last.facts.loads?.length === 1 && !isAsking(said);
  if (isSupply && said.words <= mostWords) return true;
  if (said.hoursOff !== undefined || said.count !== undefined) return true;
  // "Will it hold up?", "is that ok?": of what was just told.
  const isCheck = said.cues.has('ask-can-it') || said.cues.has('last');
  if (isCheck && isNothing && said.loose.length === 0 && said.words <= mostWordsOfCheck && !isAsking(said))
    return true;
  const keys = Object.keys(said.facts) as (keyof Stated)[];
  const brings = keys.length > 0 || said.bareLoads.length > 0 || said.removed.length > 0;
  if (turns.some(cue => said.cues.has(cue)))
    return brings || said.numbers.length > 0 || said.loose.length > 0;
  if (last.asked)
    return (brings || said.numbers.length > 0 || said.loose.length > 0) && !said.cues.has('rig');
  return (
    (keys.length > 0 && !isAsking(said) && keys.every(key => turning.includes(key))) || turnsGear(said, last)
  );
}

function mode(said: Said): MergeMode {
  if (said.cues.has('add') || (said.cues.has('and-with') && !said.cues.has('what-if'))) return 'add';
  return 'change';
}

/** Whether what is told comes on top of what was told before. */
const isMore = ({ cues }: Said): boolean => cues.has('add') || cues.has('and-with');

/** "Its 1.4", "30 watts": a draw without a name is that of the one load spoken of; a humidifier is part of its CPAP. */
function asNamed({ intent, facts: { loads = [] } }: Last, said: Said): Said {
  const cpap = loads.find(load => load.name === 'cpap');
  const named = said.facts.loads?.map(load => {
    if (cpap && load.name === 'humidifier') return { ...load, name: cpap.name };
    // What is told of an inverter runs on it.
    if (intent === 'inverter-check' && load.powerW !== undefined) return { ...load, supply: 'ac' as const };
    return load.name === 'load' && loads.length === 1 && !isMore(said)
      ? { ...load, name: loads[0]!.name }
      : load;
  });
  return named ? { ...said, facts: { ...said.facts, loads: named } } : said;
}

/** "What if I just run the fan": of the loads of before only those named. */
function onlyNamed(facts: Stated, said: Said): Stated {
  const kept = facts.loads?.filter(load => said.bareLoads.some(one => isSameName(one.name, load.name)));
  const isTimed = said.bareLoads.some(
    load => load.hoursPerDay !== undefined || load.minutesPerDay !== undefined,
  );
  const isSlip = said.corrections.length > 0;
  return said.cues.has('only') && !isTimed && !isSlip && kept?.length ? { ...facts, loads: kept } : facts;
}

/** "Plus another 30 Ah a day", "add the freezer": what comes on top of a day's use that was told as one number. */
function withUseBefore(facts: Stated, said: Said): Stated {
  const { dailyUseAh, dailyUseWh, loads } = facts;
  const brings =
    !!said.facts.loads?.length || said.facts.dailyUseAh !== undefined || said.facts.dailyUseWh !== undefined;
  if (!isMore(said) || !brings || loads || (dailyUseAh === undefined && dailyUseWh === undefined))
    return facts;
  const before = {
    name: 'what was told',
    count: 1,
    supply: 'dc' as const,
    ...(dailyUseAh === undefined ? { energyWhPerDay: dailyUseWh } : { chargeAhPerDay: dailyUseAh }),
  };
  return { ...facts, dailyUseAh: undefined, dailyUseWh: undefined, loads: [before] };
}

/** The same of what is told now: "another 30 Ah a day" joins the loads of before as one of them. */
function asLoad({ facts }: Said): Stated {
  const { dailyUseAh, dailyUseWh, ...rest } = facts;
  if (dailyUseAh === undefined && dailyUseWh === undefined) return facts;
  const use = dailyUseAh === undefined ? { energyWhPerDay: dailyUseWh } : { chargeAhPerDay: dailyUseAh };
  return { ...rest, loads: [...(rest.loads ?? []), { name: 'the rest', count: 1, supply: 'dc', ...use }] };
}

/** The facts of the question before, with what the message changes. */
export function turn(last: Last, heard: Said): Stated {
  const said = asNamed(last, heard);
  const isAnswer = last.asked !== undefined && !said.cues.has('add');
  let facts = correct(last.facts, said.corrections);
  facts = onlyNamed(removeFrom(facts, said.removed), said);
  facts = withUseBefore(facts, said);
  const isOnTop = facts.loads !== undefined && isMore(said);
  const told = isOnTop ? asLoad(said) : said.facts;
  const loads = [...(told.loads ?? []), ...said.bareLoads];
  const { loads: _loads, ...rest } = told;
  const changes: Stated = loads.length > 0 ? { ...rest, loads } : rest;
  // "and the toaster, 900 W" asked of an inverter is another question of the same kind, not one more load.
  const isQuestion = said.cues.has('question-mark') || said.cues.has('what-if') || isAsking(said);
  const replaces = last.intent === 'inverter-check' && isQuestion && !isMore(said);
  if (replaces && loads.length > 0) facts = { ...facts, loads: undefined };
  if (said.facts.peakSunHours !== undefined) facts = { ...facts, place: undefined, month: undefined };
  if (said.facts.place !== undefined || said.facts.month !== undefined)
    facts = { ...facts, peakSunHours: undefined };
  // A location without a name that fits it: the name of before was of another place.
  if (said.facts.latitudeDeg !== undefined && said.facts.place === undefined)
    facts = { ...facts, place: undefined };
  // "No sun" falls when a panel joins, "no driving" when a drive does.
  const isBack = (source: string): boolean =>
    source === 'charging' ||
    (source === 'solar' ? said.facts.solar !== undefined : said.facts.drivingHoursPerDay !== undefined);
  if (facts.without && (said.facts.solar || said.facts.drivingHoursPerDay !== undefined))
    facts = { ...facts, without: facts.without.filter(source => !isBack(source)) };
  if (said.corrections.length > 0) return facts;
  const merged = mergeFacts(facts, changes, isAnswer ? 'state' : mode(said));
  // "And with 200 Ah?" is another battery in its place; only "add" and "another" put one beside it.
  if (said.facts.batteries && !said.cues.has('add'))
    merged.batteries = mergeBatteries(facts.batteries ?? [], said.facts.batteries, 'change');
  return Object.fromEntries(Object.entries(merged).filter(([, value]) => value !== undefined)) as Stated;
}
