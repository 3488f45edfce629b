import type { Reply } from '#answer/reply.ts';
import { lasting, listIn } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Stated } from '#rig/rig.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';

/** What most campers start with, common practice. */
const usual = { capacityAh: 100, chemistry: 'agm' } as const;

/**
 * Things without any figure, and no battery: on a usual one, so that a beginner gets a number before the question.
 * Undefined where something is told, and where somebody's health hangs on it.
 */
export function typicalRunTime(facts: Stated): Stated | undefined {
  const { loads = [], batteries, volts, netCurrentA, dailyUseAh, dailyUseWh, inverter } = facts;
  const isAnyTold = [batteries, volts, netCurrentA, dailyUseAh, dailyUseWh, inverter].some(
    told => told !== undefined,
  );
  const rows = loads.map(load => applianceOf(load.name));
  const isTypical = rows.every(row => row !== undefined && !row.isMedical && row.supply === 'dc');
  if (isAnyTold || loads.length === 0 || loads.some(hasDraw) || !isTypical) return undefined;
  return { ...facts, batteries: [usual] };
}

/** Words for how long typical things run on a usual battery, and the one question that helps most. */
export function answerTypical(facts: RunTimeFacts, result: RunTime, _setting: RequestContext): Reply {
  const w = english;
  const { runTime, usableCapacity, dailyUse } = result.figures;
  const things = listIn(
    (facts.loads ?? []).map(({ name }) => name),
    w,
  );
  const { assumed } = reasons(result);
  const wantedH = facts.durationH;
  const verdict = wantedH === undefined ? undefined : enough(runTime, wantedH);
  const isOne = facts.loads?.length === 1 && present(facts.loads[0]).count === 1 && !things.endsWith('s');
  const gaps = {
    lasts: lasting(runTime, w),
    things: isOne
      ? w.say('a-typical', 'a typical {things}', { things })
      : w.say('typical-all', 'typical {things}', { things }),
    it: isOne ? w.say('it', 'it') : w.say('them', 'them'),
    ah: w.decimals(usual.capacityAh, 0),
  };
  const heads = {
    yes: w.say('typical-yes', 'Most likely: a typical {ah} Ah AGM runs {it} {lasts}.', gaps),
    tight: w.say('typical-tight', 'Perhaps: a typical {ah} Ah AGM runs {it} {lasts}.', gaps),
    no: w.say('typical-no', 'Hardly: a typical {ah} Ah AGM runs {it} {lasts}.', gaps),
  };
  const battery = {
    name: 'batteryCapacity',
    value: usual.capacityAh,
    unit: 'Ah',
    why: 'AGM, as you named none',
  };
  return {
    headline: verdict
      ? heads[verdict]
      : w.say('typical-lasts', 'A typical {ah} Ah AGM runs {it} {lasts}.', gaps),
    lines: [
      w.say('typical-use', 'That is for {things}, about {use} Ah a day.', {
        things: gaps.things,
        use: w.significant(dailyUse.value, 2),
      }),
      w.say('typical-ask', 'What battery have you got? Its size and kind change this most.'),
    ],
    verdict: null,
    figures: {
      runTime: figure(runTime, 'h'),
      usableCapacity: figure(usableCapacity, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    assumed: [battery, ...assumed],
    next: ['100Ah AGM', '200Ah AGM', '100Ah lithium'],
  };
}
