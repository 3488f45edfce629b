import type { Reply } from '#answer/reply.ts';
import { duration, lasting, list, sentence } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { factsOf } from '../facts.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { withLearned } from '../learned.ts';
import { hasCapacity } from '../needs.ts';
import { hasUse } from '../use.ts';
import { wantedTime } from '../words.ts';
import { computeRunTime, type RunTime, type RunTimeFacts } from './compute.ts';

/** One person's rig and how long it lasts. */
interface Entry {
  readonly name: string;
  readonly isAsker: boolean;
  readonly facts: RunTimeFacts;
  readonly result: RunTime;
}

const canRun = (rig: Facts): rig is Facts & Pick<RunTimeFacts, 'batteries'> =>
  hasCapacity(rig) && hasUse(rig);

/** The rigs to compare, by owner: those named, else all that have a battery and loads; none where one alone is left. */
function entries(facts: RunTimeFacts, setting: RequestContext, w: Speech): Entry[] {
  const { parsed, rigs, ownKey } = setting;
  const isAsked = parsed.cues.has('ask-whose') || (parsed.owners.length ?? 0) > 1;
  if (!isAsked) return [];
  const named = parsed.owners.map(owner => (owner === 'me' ? ownKey : owner === 'us' ? '' : owner));
  const keys = named.length > 1 ? named : Object.keys(rigs);
  // A rig that two share is one.
  const apart = [...new Map(keys.map(key => [rigs[key] ?? key, key] as const)).values()];
  const found = apart.flatMap(key => {
    const kept = rigs[key];
    const rig = kept && factsOf(kept);
    if (!rig || !canRun(rig)) return [];
    const own: RunTimeFacts = {
      ...rig,
      durationH: facts.durationH,
      ambientC: facts.ambientC,
      depthOfDischargePercent: facts.depthOfDischargePercent,
    };
    const name = key === '' ? w.say('the-chat', 'the chat') : key;
    const taught = withLearned(own, setting.learnedOf?.(key));
    return [{ name, isAsker: key === ownKey, facts: taught, result: computeRunTime(taught, setting) }];
  });
  return found.length > 1 ? found : [];
}

const rig = ({ name, isAsker }: Entry, w: Speech): string =>
  isAsker ? w.say('yours', 'Yours') : w.say('rig-of', "{name}'s", { name: sentence(name) });
const hours = ({ result }: Entry) => result.figures.runTime;

/** How long each lasts against a wanted time, or in order. */
function headline(order: readonly Entry[], wantedH: number | undefined, w: Speech): string {
  const [first, last] = [present(order[0]), present(order.at(-1))];
  const lasts = (entry: Entry) => {
    const gaps = { rig: rig(entry, w), time: duration(hours(entry).value, w) };
    return w.say('rig-lasts', '{rig} lasts {time}', gaps);
  };
  if (wantedH === undefined) {
    const gaps = {
      rig: rig(first, w),
      time: duration(hours(first).value, w),
      other: lasts(last).replace(/^Y/, 'y'),
    };
    return w.say('first-out', '{rig} gives out first, after {time}; {other}.', gaps);
  }
  const made = order.filter(entry => enough(hours(entry), wantedH) !== 'no');
  const time = wantedTime(wantedH, w);
  if (made.length === 0)
    return w.say('none-makes', 'None makes {time}: {best} at best.', { time, best: lasts(last) });
  if (made.length === order.length)
    return w.say('all-make', 'All can make {time}: {least} at least.', {
      time,
      least: lasts(first),
    });
  const names = (all: readonly Entry[]) =>
    list(
      all.map(entry => rig(entry, w)),
      w.say('and', 'and'),
    );
  const gaps = { time, made: names(made), others: names(order.filter(entry => !made.includes(entry))) };
  return w.say('some-make', "{made} makes {time}, {others} doesn't.", gaps);
}

/** Answers "whose lasts longer": a line a rig, the first to give out on top. Undefined where nothing is to compare. */
export function compareRigs(facts: RunTimeFacts, setting: RequestContext): Reply | undefined {
  const w = english;
  const all = entries(facts, setting, w);
  if (all.length === 0) return undefined;
  const order = [...all].sort((a, b) => hours(a).value - hours(b).value);
  const main = all.find(entry => entry.isAsker) ?? present(all[0]);
  const { runTime, usableCapacity, dailyUse } = main.result.figures;
  const lines = order.map(entry => {
    const { figures } = entry.result;
    const gaps = {
      rig: rig(entry, w),
      time: lasting(hours(entry), w),
      usable: w.significant(figures.usableCapacity.value),
      use: w.significant(figures.dailyUse.value),
    };
    const text = '{rig}: {time}, {usable} Ah to use at {use} Ah a day.';
    return w.say('rig-line', text, gaps);
  });
  return {
    headline: headline(order, facts.durationH, w),
    lines: lines.slice(0, 6),
    verdict: facts.durationH === undefined ? null : enough(runTime, facts.durationH),
    figures: {
      runTime: figure(runTime, 'h'),
      usableCapacity: figure(usableCapacity, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    ...reasons(main.result),
    cautions: loadCautions(main.facts, main.result.bank),
    next: [
      w.say('next-mine', 'how long will mine last?'),
      w.say('next-lithium', 'what if lithium?'),
      w.say('next-working', 'show the working'),
    ],
  };
}
