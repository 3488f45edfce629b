import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure, reasons } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { whereAndWhen } from '../../sun.ts';
import { computeSolarYield } from '../compute.ts';

/** A panel to go by where none is told, W: others make as many times that. */
const exampleW = 100;

/** The sun of a known place where no panel is told, and what 100 W make of it; undefined where the place isn't known. */
export function sunHoursOf(facts: Facts, setting: RequestContext): Reply | undefined {
  if (facts.solar?.some(({ powerW }) => powerW !== undefined)) return undefined;
  const [first] = facts.solar ?? [];
  const panel = { ...(first ?? { count: 1 }), count: 1, powerW: exampleW };
  const result = computeSolarYield({ ...facts, solar: [panel] }, setting);
  if (result.sun.latitudeDeg === undefined) return undefined;
  const { peakSunHours, dailyYield } = result.figures;
  return {
    headline: sentence(
      `about ${plain(peakSunHours.value)} ${plain(peakSunHours.value) === '1' ? 'hour’s' : 'hours’'} worth of full sun a day${whereAndWhen(facts, result.sun)}.`,
    ),
    lines: [
      `${exampleW} W lying ${facts.mount === 'tilted' ? 'tilted' : 'flat'} make about ${plain(dailyYield.value)} Ah a day of it; others as many times that.`,
    ],
    verdict: null,
    figures: { peakSunHours: figure(peakSunHours, 'h'), dailyYield: figure(dailyYield, 'Ah') },
    ...reasons(result),
    next: ['200W panel'],
  };
}
