import type { Reply } from '#answer/reply.ts';
import { exactly, rounded } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { describeBank } from '../words.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';

/** Words that ask what is taken out of the battery or left in it, not for how long it lasts. */
const asksShare: readonly string[] = [
  'how_much left|is_left|leaves|leave|remains -long -longer -hours -hrs -days -nights -need -solar -day_left -time_left',
  'how_much of_our|of_my|of_the|of_a|of_it|out_of -long -hours -hrs -days -nights -need -sun -solar',
  'do_to|does_that_do|do_to_a|do_to_my what|whats -heat -hot -cold -degrees -long',
  'a_lot|much_out_of is_that|off_the|off_a|off_my -long -hours -hrs -days -nights',
];

/** Words for what a day, or the time told, takes of what may be used; undefined where that isn't asked. */
export function answerShare(
  facts: RunTimeFacts,
  { figures, bank }: RunTime,
  setting: RequestContext,
): Reply | undefined {
  const isMedical = facts.loads?.some(({ name }) => applianceOf(name)?.isMedical);
  if (isMedical || !isSpotted(setting.parsed.recognised.words, asksShare)) return undefined;
  const w = english;
  const { usableCapacity, dailyUse } = figures;
  const hours = facts.durationH ?? 24;
  const usedAh = (dailyUse.value * hours) / 24;
  const leftAh = usableCapacity.value - usedAh;
  const gaps = {
    time: facts.durationH === undefined ? w.say('a-day-of-it', 'A day of it') : exactly(hours, w),
    used: rounded(usedAh, w),
    left: rounded(Math.max(0, leftAh), w),
    usable: rounded(usableCapacity.value, w),
    bank: describeBank(bank, setting, w),
  };
  return {
    headline:
      leftAh < 0
        ? w.say('takes-all', '{time} takes about {used} Ah, more than the {usable} Ah you can use.', gaps)
        : w.say(
            'takes-share',
            '{time} takes about {used} Ah: about {left} of {usable} usable Ah are left.',
            gaps,
          ),
    lines: [w.say('bank-gives', '{bank} gives you about {usable} Ah to use.', gaps)],
    verdict: null,
    next: [w.say('next-how-long', 'how long will it last?'), w.say('next-working', 'show the working')],
  };
}
