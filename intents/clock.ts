import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from './intent.ts';
import { whereOf } from './sun.ts';

/** Hour of the day (0–24) of the message, by the sun where the place is known, else by the message's own clock. */
export function clockHour(facts: Facts, { at }: Pick<RequestContext, 'at'>): number {
  const hour = at.getUTCHours() + at.getUTCMinutes() / 60 + (whereOf(facts).longitudeDeg ?? 0) / 15;
  return ((hour % 24) + 24) % 24;
}
