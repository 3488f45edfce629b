import type { Reply } from '#answer/reply.ts';
import { exactly, lasting } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Stated } from '#rig/rig.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RunTime } from './compute.ts';

/**
 * Amp hours left by a screen on a battery whose size nobody told, as a battery of so much that may be emptied; undefined
 * where a size is known, or where somebody's health hangs on it.
 */
export function leftAlone(facts: Stated): Stated | undefined {
  const { chargeLeftAh, batteries = [], loads = [] } = facts;
  const isSized = batteries.some(({ capacityAh, energyWh }) => (capacityAh ?? energyWh) !== undefined);
  const isMedical = loads.some(({ name }) => applianceOf(name)?.isMedical);
  if (chargeLeftAh === undefined || isSized || isMedical) return undefined;
  const chemistry = batteries[0]?.chemistry ?? 'lfp';
  return {
    ...facts,
    // A current read off holds all that runs.
    ...(facts.netCurrentA !== undefined && { loads: undefined }),
    chargeLeftAh: undefined,
    batteries: [{ capacityAh: chargeLeftAh, chemistry }],
    depthOfDischargePercent: 100,
  };
}

/** Words for how long what is left lasts, which is to empty and further than it should go. */
export function answerAhLeft({ durationH, chargeLeftAh = 0 }: Stated, result: RunTime): Reply {
  const w = english;
  const { runTime, dailyUse } = result.figures;
  const verdict = durationH === undefined ? null : enough(runTime, durationH);
  const gaps = { ah: w.significant(chargeLeftAh), lasts: lasting(runTime, w) };
  const heads = {
    yes: w.say('left-yes', 'Yes, if it may run to empty: {ah} Ah left lasts {lasts}.', gaps),
    tight: w.say('left-tight', 'Tight, even run to empty: {ah} Ah left lasts {lasts}.', gaps),
    no: w.say('left-no', 'No, not even run to empty: {ah} Ah left lasts {lasts}.', gaps),
  };
  const usedAh = (dailyUse.value * (durationH ?? 24)) / 24;
  const uses = { used: w.significant(usedAh, 2), time: exactly(durationH ?? 24, w) };
  return {
    headline: verdict
      ? heads[verdict]
      : w.say('left-lasts', '{ah} Ah left lasts {lasts}, run right to empty.', gaps),
    lines: [
      w.say('left-used', 'In {time} about {used} Ah are used.', uses),
      w.say(
        'left-floor',
        'Lead-acid should keep half of its label, lithium a fifth: how big is it, and which kind?',
      ),
    ],
    verdict: null,
    figures: { runTime: figure(runTime, 'h'), dailyUse: figure(dailyUse, 'Ah') },
    ...reasons(result),
    next: ['100Ah AGM', '100Ah lithium'],
  };
}
