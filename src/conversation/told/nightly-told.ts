import { isMedicalNamed } from '#intents/facts.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

/** Hours that a night's sleep has. */
const leastH = 3;
const mostH = 14;

const isTime = ({ kind, dimension }: Mention): boolean => kind === 'amount' && dimension === 'time';
const isNight = ({ spelled = '' }: Mention): boolean => /^nights?$/.test(spelled);
const isOfNight = (words: readonly string[], mentions: readonly Mention[]): boolean =>
  words.some(word => word === 'night' || word === 'nights' || word === 'nightly') || mentions.some(isNight);

/**
 * "CPAP 30 W for 8 h on 50 Ah, how many nights?": what somebody sleeps with runs its hours every night, so the one time
 * told beside nights is each night's, and no length of the stay. Nothing where its hours were read as such already.
 */
export function withNightlyTold(stated: Stated, { mentions, words }: Recognised): Stated {
  const { loads = [], durationH, ...rest } = stated;
  const [load] = loads;
  if (!load || loads.length > 1 || !isMedicalNamed(load.name) || load.hoursPerDay !== undefined)
    return stated;
  if (load.powerW === undefined && load.currentA === undefined) return stated;
  const times = mentions.filter(one => isTime(one) && !isNight(one));
  const [hours] = times;
  if (times.length !== 1 || !hours || !isOfNight(words, mentions)) return stated;
  const { value } = hours;
  if (value < leastH || value > mostH) return stated;
  const nights = mentions.find(one => isTime(one) && isNight(one))?.value;
  const stayH = durationH === value ? nights : durationH;
  const { hoursOnce: _once, ...own } = load;
  return {
    ...rest,
    ...(stayH !== undefined && { durationH: stayH }),
    loads: [{ ...own, hoursPerDay: value }],
  };
}
