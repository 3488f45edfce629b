import type { Heard } from '../hear.ts';

const driving: ReadonlySet<string> = new Set('drive drives drove driven driving'.split(' '));

/**
 * "Drove about 2 hrs with a 30 A DC-DC": of readings that differ in whether hours are the drive's or the question's, the
 * drive's, where the words drive. Of that one doubt it is free, and of no other.
 */
export function asDriven(heard: Heard): Heard {
  const { facts, options, recognised } = heard;
  const { durationH, drivingHoursPerDay, ...rest } = facts;
  const hours = durationH ?? drivingHoursPerDay;
  if (hours === undefined || !recognised.words.some(word => driving.has(word))) return heard;
  const isOfQuestion = ({ intent }: (typeof options)[number]): boolean => intent === heard.intent;
  const driven = options.find(
    one => isOfQuestion(one) && one.stated.drivingHoursPerDay === hours && one.stated.durationH === undefined,
  );
  if (!driven) return heard;
  const isTold = ({ stated }: (typeof options)[number]): boolean => stated.durationH === hours;
  // Those two are one doubt, and the words settle it.
  const settled = options.filter(isTold).reduce((sum, one) => sum + one.probability, 0);
  const probability = driven.probability + settled;
  const [first] = options;
  const surer = first && isOfQuestion(first) ? probability / first.probability : 1;
  return {
    ...heard,
    facts: { ...rest, drivingHoursPerDay: hours },
    certainty: Math.max(heard.certainty, Math.min(1, heard.certainty * surer)),
    options: [{ ...driven, probability }, ...options.filter(one => one !== driven && !isTold(one))],
  };
}
