import type { Heard } from '../hear.ts';

const driving: ReadonlySet<string> = new Set('drive drives drove driven driving'.split(' '));

/**
 * "Drove about 2 hrs with a 30 A DC-DC": of readings that differ in whether hours are the drive's or the question's, the
 * drive's, where the words drive. As unsure as it was, for what else it may be.
 */
export function asDriven(heard: Heard): Heard {
  const { facts, options, recognised } = heard;
  const { durationH, ...rest } = facts;
  if (durationH === undefined || !recognised.words.some(word => driving.has(word))) return heard;
  const driven = options.find(
    ({ intent, stated }) =>
      intent === heard.intent && stated.drivingHoursPerDay === durationH && stated.durationH === undefined,
  );
  if (!driven) return heard;
  const isTold = (option: (typeof options)[number]): boolean => option.stated.durationH === durationH;
  // Those two are one doubt, and the words settle it.
  const probability =
    driven.probability + options.filter(isTold).reduce((sum, one) => sum + one.probability, 0);
  return {
    ...heard,
    facts: { ...rest, drivingHoursPerDay: durationH },
    options: [{ ...driven, probability }, ...options.filter(one => one !== driven && !isTold(one))],
  };
}
