import { exactly, isSaidAlike, lasting } from '#answer/say.ts';
import type { Speech } from '#answer/speech.ts';
import type { Range } from '#quantity/range.ts';
import { nightLongH } from '../by-night.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';

/** "Will it kill the battery", "will it be dead by then": yes to that means that it doesn't last. */
const flattens: readonly string[] = [
  'flatten|flattens|kill|kills|killing|drain_my|drain_the|drain_it|drains -how -when -without -not -dont -doesnt -only -until -till -time',
  'will|would|could|can|is|do|does be_flat|go_flat|goes_flat|run_flat|be_dead|a_dead|dead_one|dead_by|die|dies|hurt|be_empty|be_gone -how -when -without -until -till -before_it -time',
  'so_i_am_flat|is_gone_overnight|gone_by_morning|flat_by_morning|dead_by_morning -how -when -until -till',
];

type Parsed = Pick<RequestContext['parsed'], 'cues' | 'recognised'>;

/** Whether it is asked if something flattens the battery. */
export const asksFlat = ({ recognised }: Pick<Parsed, 'recognised'>): boolean =>
  isSpotted(recognised.words, flattens);

/** The time that it is asked of, where no other is told: the night that the words speak of. */
export const flatNightH = ({ cues, recognised }: Parsed): number | undefined =>
  asksFlat({ recognised }) && cues.has('night') ? nightLongH : undefined;

/** The first line to that: yes where it lasts too short. */
export function flatHeadline(
  runTime: Range,
  wantedH: number,
  verdict: 'yes' | 'tight' | 'no',
  w: Speech,
): string {
  const isAlike = isSaidAlike(runTime.value, wantedH, w);
  const gaps = { lasts: lasting(runTime, w), wanted: exactly(wantedH, w) };
  if (verdict === 'yes')
    return isAlike
      ? w.say('not-flat', 'No, not in {wanted}: it lasts {lasts}.', gaps)
      : w.say('not-flat-plainly', 'No: it lasts {lasts}.', gaps);
  if (verdict === 'no')
    return isAlike
      ? w.say('gets-flat', 'Yes, within {wanted}: it lasts only {lasts}.', gaps)
      : w.say('gets-flat-plainly', 'Yes: it lasts only {lasts}.', gaps);
  return runTime.value < wantedH
    ? w.say('likely-flat', 'Probably: it lasts {lasts}.', gaps)
    : w.say('may-be-flat', 'Hardly, but it could: it lasts {lasts}.', gaps);
}
