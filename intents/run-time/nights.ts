import { quarters } from '#answer/say.ts';
import type { Speech } from '#answer/speech.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Range } from '#quantity/range.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import type { RunTimeFacts } from './compute.ts';

/** "About 1¾ nights (1½–2)": what runs by night alone is counted in nights, never in hours on end. */
export function nights({ value, low, high }: Range, w: Speech): string {
  const n = (hours: number): string => quarters(Math.floor(hours / 6) / 4);
  const gaps = { n: n(value), span: `${n(low)}–${n(high)}`, count: value / 24 };
  return w.say('nights', 'about {n} nights ({span})', gaps);
}

/** "How many nights?" of what lasts one at least. */
export const asksNights = ({ value }: Range, { parsed: { recognised } }: RequestContext): boolean =>
  value >= 24 && isSpotted(recognised.words, ['how_many_nights|what_nights|number_of_nights']);

/** How long a night is for a medical device, where it is told (h). */
export const medicalNight = ({ loads = [] }: RunTimeFacts): number | undefined => {
  const device = loads.find(load => applianceOf(load.name)?.isMedical);
  return loads.length === 1 ? device?.hoursPerDay : undefined;
};
