import { duration } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import type { LearnedOfRig, Rig } from '#rig/rig.ts';
import { factsOf } from './facts.ts';
import { expectedOfRig, type Kept, sureOf, type Taught } from './learning.ts';
import { useOf } from './use.ts';

/** Changes smaller than this are not worth a word: against what was told, and against what was said last. */
const worth = { draw: 0.08, sun: 0.15 } as const;

const isNew = (factor: number, said: number, least: number): boolean =>
  Math.abs(Math.log(factor / said)) > least;

/** Hours that a rig lasts from full with nothing coming in, by the factors learnt on its draw and capacity. */
function lastsH(rig: Rig, at: Date, learned?: LearnedOfRig): number {
  const facts = factsOf(rig);
  const bank = present(bankIn(facts), 'a battery');
  const told = exploreRunTime({
    bank: { ...bank, stateOfChargePercent: undefined },
    use: useOf(facts, bank.voltageV, undefined, at),
  }).figures.runTime.value;
  return (told * (learned?.capacity?.value ?? 1)) / (learned?.draw?.value ?? 1);
}

/** "Your fridge takes", "your rig takes". */
const what = ({ loads }: Rig, { say }: Speech): string =>
  loads?.length === 1
    ? say('your-load', 'your {name}', { name: present(loads[0]).name })
    : say('your-gear', 'your gear');

const total = (all: readonly number[]): number => all.reduce((sum, ah) => sum + ah, 0);

/** What the readings of a rig say of it, in a line each; empty where they tell nothing yet. */
export function learnedLines(rig: Rig, learned: LearnedOfRig, at: Date, w: Speech = english): string[] {
  const expected = expectedOfRig(rig, at);
  if (!expected) return [];
  const lines: string[] = [];
  const toldA = total(expected.useAh) / 24;
  if (learned.draw) {
    const gaps = {
      what: what(rig, w),
      now: w.significant(toldA * learned.draw.value, 2),
      told: w.significant(toldA, 2),
      lasts: duration(lastsH(rig, at, learned), w),
      before: duration(lastsH(rig, at), w),
    };
    lines.push(
      w.say(
        'learned-draw',
        'By your readings {what} takes {now} A on average, not {told}: from full it lasts {lasts}, not {before}.',
        gaps,
      ),
    );
  }
  if (learned.capacity && Math.abs(Math.log(learned.capacity.value)) > worth.draw)
    lines.push(
      w.say('learned-capacity', 'The battery holds about {now} Ah, not {told}.', {
        now: w.significant(expected.capacityAh * learned.capacity.value, 2),
        told: w.significant(expected.capacityAh),
      }),
    );
  if (learned.sun && isNew(learned.sun.value, 1, worth.sun))
    lines.push(
      w.say('learned-sun', 'The panel puts in about {now} Ah a day, not {told}.', {
        now: w.significant(total(expected.sunAh) * learned.sun.value, 2),
        told: w.significant(total(expected.sunAh), 2),
      }),
    );
  return lines;
}

/** What there is to say after a reading, once, and what is kept of having said it. */
export function saidOf(
  { kept, taken, expectedPercent, found, expected }: Taught,
  rig: Rig,
  at: Date,
  w: Speech = english,
): { readonly lines: readonly string[]; readonly kept: Kept } {
  const percent = w.decimals(expectedPercent, 0);
  if (taken === 'odd')
    return {
      lines: [
        w.say(
          'odd-reading',
          'That reading fits nothing I know: I expected about {percent} % by now. Is it right? If the next one agrees, I go by it.',
          { percent },
        ),
      ],
      kept,
    };
  if (taken === 'moved')
    return {
      lines: [
        w.say('moved', 'I expected about {percent} % by now, so I take it that it was charged.', { percent }),
      ],
      kept,
    };
  const sure = sureOf(
    found,
    expected.sunAh.some(ah => ah > 0),
  );
  const [draw, sun] = kept.said ?? [1, 1];
  const now = [sure?.draw?.value ?? draw, sure?.sun?.value ?? sun] as const;
  const isWorth = isNew(now[0], draw, worth.draw) || isNew(now[1], sun, worth.sun);
  if (!sure || !isWorth) return { lines: [], kept };
  return { lines: learnedLines(rig, sure, at, w).slice(0, 2), kept: { ...kept, said: [...now] } };
}
