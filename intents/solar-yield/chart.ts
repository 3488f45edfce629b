import type { MonthsChart } from '#answer/chart/chart.ts';
import type { Reply } from '#answer/reply.ts';
import { present } from '#basics/present.ts';
import { plain } from '#quantity/round.ts';
import type { RequestContext } from '../intent.ts';
import { describeSun, whereAndWhen } from '../sun.ts';
import { computeSolarYield, type SolarYield, type SolarYieldFacts } from './compute.ts';

/** What the panels make a day in each month of the year, where the place is known. */
export function monthsChart(
  facts: SolarYieldFacts,
  result: SolarYield,
  setting: RequestContext,
): Reply['chart'] {
  const { sun, figures } = result;
  if (sun.latitudeDeg === undefined || sun.peakSunHours !== undefined || result.tooLowV !== undefined)
    return undefined;
  // The weather of one month told is no weather of all the others.
  if (figures.dailyYield.high < 0.05) return undefined;
  return (): MonthsChart => ({
    kind: 'months',
    title: `${plain(figures.dailyYield.value)} Ah a day${whereAndWhen(facts, sun)}, and in the other months`,
    note: describeSun(facts, sun, figures.peakSunHours.value),
    unit: 'Ah',
    months: Array.from({ length: 12 }, (_, i) =>
      i + 1 === sun.month
        ? figures.dailyYield
        : computeSolarYield({ ...facts, month: i + 1 }, setting).figures.dailyYield,
    ),
    month: present(sun.month),
    ...(figures.dailyUse.value > 0 && { use: figures.dailyUse.value }),
  });
}
