import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import { hasTypical } from '#intents/facts.ts';
import { hasDraw, isSameName } from '#rig/merge.ts';
import type { Interpreted } from '../interpret.ts';
import { toldNothing } from './uncounted-turn.ts';

/** Facts of sun and weather: they change an answer only where something makes power of them. */
const ofSun: readonly string[] = ['sky', 'skyLastDays', 'shade', 'mount'];

/** Words that ask for the same once more, another way. */
const againCues = ['ask-working', 'ask-why', 'simpler', 'same-again', 'correction'] as const;

const isTold = ({ facts, removed, corrects }: Interpreted['heard']): boolean =>
  Object.keys(facts).length > 0 || removed.length > 0 || corrects !== undefined;

/** The thing that a turn brings without a figure, and nothing else: "and the humidifier on". */
function uncountedIn({
  facts: { loads = [], ...rest },
  removed,
  corrects,
}: Interpreted['heard']): string | undefined {
  const [first, ...more] = loads;
  const isBare = first !== undefined && Object.keys(first).every(key => key === 'name' || key === 'supply');
  const isAlone = more.length === 0 && removed.length === 0 && !corrects && Object.keys(rest).length === 0;
  return isBare && isAlone ? first.name : undefined;
}

/** Whether a thing that is only named again was counted in the answer before: what is said of it is more than its name. */
const isCounted = (name: string, { frame }: Interpreted): boolean =>
  frame?.facts.loads?.some(load => isSameName(load.name, name) && (hasDraw(load) || hasTypical(load.name))) ??
  false;

/** Why what was told changes nothing, where that can be said. */
function reason({ heard, facts, intent }: Interpreted): string | undefined {
  const isOfSun = Object.keys(heard.facts).some(key => ofSun.includes(key));
  return isOfSun && !facts.solar && !intent.takes.includes('solar')
    ? english.say(
        'no-sun-counted',
        'There’s no solar in it, so the weather makes no difference. Got a panel? Tell me its watts.',
      )
    : undefined;
}

/** Units by the words that ask for them, as lines of answers write them. */
const asked: readonly (readonly [words: readonly string[], line: RegExp])[] = [
  [['amps', 'amp', 'current'], /\d A\b/],
  [['watts', 'watt'], /\d W\b/],
  [['volts', 'voltage'], /\d V\b/],
  [['awg', 'gauge', 'b&s'], /AWG/],
  [['ah'], /\d Ah\b/],
  [['kilos', 'kg', 'heavy', 'weigh', 'weight', 'lighter'], /\d kg\b|weighs/],
  [['percent', '%'], /\d %/],
  [['fuse'], /\bfuse\b/],
  [['cable', 'wire'], /\bcable\b/],
  [['bigger', 'larger'], /\byou need about [\d,]+ Ah\b/],
];

/** "How many amps is that?": the line of the answer that tells it, where the first one doesn't. */
function lineOf({ headline, lines = [] }: Reply, { recognised }: Interpreted['heard']): string | undefined {
  const wanted = asked.find(([words]) => words.some(word => recognised.words.includes(word)))?.[1];
  return wanted && !wanted.test(headline) ? lines.find(line => wanted.test(line)) : undefined;
}

const withFirst = (reply: Reply, line: string): Reply => ({
  ...reply,
  headline: line,
  lines: [reply.headline, ...(reply.lines ?? []).filter(other => other !== line)],
});

/** "Why?": what the answer comes from stands in the line under it. */
export function withReasonFirst(reply: Reply): Reply {
  const [why] = reply.lines ?? [];
  return why === undefined ? reply : withFirst(reply, why);
}

/**
 * A turn that is answered as the question before was ("what if it rains", of a battery alone) says that it is: the
 * same words once more would look unheard.
 */
export function withNoChange(reply: Reply, read: Interpreted): Reply {
  const { heard, replay, intent } = read;
  if (
    !replay ||
    intent.isArgument ||
    Object.keys(reply.figures ?? {}).length === 0 ||
    againCues.some(cue => heard.cues.has(cue))
  )
    return reply;
  const before = replay();
  const isSame = before?.headline === reply.headline && before.lines?.join() === reply.lines?.join();
  if (!isSame) return reply;
  const wanted = isTold(heard) ? undefined : lineOf(reply, heard);
  if (wanted !== undefined) return withFirst(reply, wanted);
  const thing = uncountedIn(heard);
  if (thing !== undefined && isCounted(thing, read)) return toldNothing(reply, read);
  if (thing !== undefined)
    return {
      ...reply,
      headline: english.say('cannot-count', 'I can’t count the {thing} yet: what does it draw?', { thing }),
      lines: [
        english.say('without-it', 'Without it: {same}', { same: reply.headline }),
        ...(reply.lines ?? []),
      ],
    };
  const [gone] = heard.removed;
  if (gone !== undefined && Object.keys(heard.facts).length === 0)
    return {
      ...reply,
      headline: english.say('none-to-take-out', 'There’s no {thing} in it to take out.', { thing: gone }),
      lines: [reply.headline, ...(reply.lines ?? [])],
    };
  if (!isTold(heard)) return toldNothing(reply, read);
  const why = reason(read);
  return {
    ...reply,
    headline: english.say('no-change', 'No change. {same}', { same: reply.headline }),
    lines: [...(why ? [why] : []), ...(reply.lines ?? [])],
  };
}
