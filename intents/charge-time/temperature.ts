import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { hasCapacity } from '../needs.ts';
import { hasUse } from '../use.ts';
import { chargeSharesAt } from './compute.ts';

/** What is asked of a temperature alone: whether a battery of that kind may be charged at it. */
export interface AtTemperature {
  readonly chemistry: Chemistry;
  readonly ambientC: number;
}

/** "Can I charge lithium at 2 degrees?": a kind and a temperature, with no size, level or charger to work a time out of. */
export function atTemperature(facts: Facts): AtTemperature | undefined {
  const { ambientC, batteries, chargers, solar, chargeNeededAh } = facts;
  const chemistry = batteries?.find(battery => battery.chemistry)?.chemistry;
  const isMore = hasCapacity(facts) || hasUse(facts) || (chargers ?? solar ?? chargeNeededAh) !== undefined;
  return ambientC === undefined || chemistry === undefined || isMore ? undefined : { chemistry, ambientC };
}

const exampleAh = 100;
/** Above this it is heat that limits the charge, °C. */
const warmC = 40;

/** Whether, and how gently, it may be charged at that temperature of its own. */
export function answerAtTemperature({ chemistry, ambientC }: AtTemperature): Reply {
  const w = english;
  const { share, best, upToC } = chargeSharesAt(chemistry, ambientC);
  const gaps = {
    c: w.decimals(ambientC, 0),
    amps: w.significant(share * exampleAh, 2),
    upTo: w.decimals(upToC, 0),
  };
  if (chemistry !== 'lfp')
    return {
      headline: w.say(
        'lead-any-cold',
        'Yes: lead-acid takes charge at {c} °C, only slower than in the warm.',
        gaps,
      ),
      lines: [
        ambientC <= 0
          ? w.say('lead-frozen', 'A flat one can freeze: never charge it frozen, thaw it first.')
          : w.say('lead-compensate', 'A charger that senses temperature sets its volts right for it.'),
      ],
      verdict: 'yes',
      next: ['AGM or lithium?', 'how full is 12.4V'],
    };
  const verdict: Exclude<Verdict, null> = share === 0 ? 'no' : share < best ? 'tight' : 'yes';
  const isHot = ambientC > warmC;
  const headlines = {
    no:
      ambientC < 0
        ? w.say('lithium-frozen', 'No, not at {c} °C: charging lithium below freezing ruins its cells.', gaps)
        : w.say('lithium-too-hot', 'No, not at {c} °C: that is too hot to charge lithium.', gaps),
    tight: isHot
      ? w.say(
          'lithium-hot',
          'Better not at {c} °C: charge it gently, up to {amps} A into each 100 Ah, or wait until it’s cooler.',
          gaps,
        )
      : w.say(
          'lithium-gently',
          'Yes, but gently at {c} °C: up to {amps} A into each 100 Ah until it’s past {upTo} °C.',
          gaps,
        ),
    yes: w.say('lithium-fine', 'Yes: at {c} °C lithium takes its full charge.', gaps),
  };
  return {
    headline: headlines[verdict],
    lines: [
      isHot
        ? w.say(
            'hot-wears',
            'Heat wears it: shade and air for it, and best under 45 °C. Its BMS and its own sheet come first.',
          )
        : w.say(
            'cells-count',
            'It’s the cells that count: a battery kept in the warm may be charged in the cold. Its BMS and its own sheet come first.',
          ),
    ],
    verdict,
    cautions: ambientC <= 5 ? ['lithium-cold'] : [],
    next: ['AGM or lithium?', '25A DC-DC, 100Ah lithium from 50 %'],
  };
}
