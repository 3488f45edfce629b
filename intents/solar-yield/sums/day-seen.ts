import type { Reply } from '#answer/reply.ts';
import { rounded, span } from '#answer/say.ts';
import { plain } from '#quantity/round.ts';
import { figure, reasons } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { panelsW, whereAndWhen } from '../../sun.ts';
import { computeSolarYield, type SolarYieldFacts } from '../compute.ts';

const nominalV = 12;
/** So many times the best of its range no day brings: the panel or the sum is another one. */
const beyond = 1.4;

/** A day's yield that this message tells, Ah; undefined: none, or it was remembered. */
function toldAh({ recalled, parsed: { facts } }: RequestContext): number | undefined {
  if (recalled.has('solarAhPerDay') || recalled.has('solarWhPerDay')) return undefined;
  return (
    facts.solarAhPerDay ?? (facts.solarWhPerDay === undefined ? undefined : facts.solarWhPerDay / nominalV)
  );
}

/** Whether what panels made in a day is as it should be; undefined where none is told. */
export function daySeen(facts: SolarYieldFacts, setting: RequestContext): Reply | undefined {
  const ah = toldAh(setting);
  const powerW = panelsW(facts);
  if (ah === undefined || powerW === undefined) return undefined;
  const { solarAhPerDay, solarWhPerDay, ...rest } = facts;
  const result = computeSolarYield(rest as SolarYieldFacts, setting);
  const { dailyYield } = result.figures;
  const { low, high, value } = dailyYield;
  const where = whereAndWhen(facts, result.sun);
  const usual = `${plain(powerW)} W makes about ${span(low, high, 'Ah')} a day${where}`;
  const made = `${plain(ah)} Ah`;
  if (ah > beyond * high)
    return {
      headline: `No, ${made} is too much: ${usual}.`,
      lines: [
        'A panel gives its watts about noon only: over a fair day that makes some 4 to 6 hours’ worth of them.',
        `For ${made} a day you’d want about ${rounded((powerW * ah) / value)} W.`,
      ],
      verdict: 'no',
      figures: { dailyYield: figure(dailyYield, 'Ah') },
      ...reasons(result),
    };
  const verdict = ah >= low ? 'yes' : ah >= 0.6 * low ? 'tight' : 'no';
  const headline = {
    yes: ah > high ? `Very good: ${made}, as ${usual}.` : `Yes, that’s about right: ${made}, as ${usual}.`,
    tight: `A bit low: ${made}, as ${usual}.`,
    no: `Low: ${made}, as ${usual}.`,
  } as const;
  return {
    headline: headline[verdict],
    lines: [
      verdict === 'yes'
        ? `On average ${plain(value)} Ah: one day may be half or one and a half of that.`
        : 'A dull day, shade or a battery that was full early does that: then little more could go in.',
      'A full battery hides what the panel could do; the days when it is low tell.',
    ],
    verdict,
    figures: { dailyYield: figure(dailyYield, 'Ah') },
    ...reasons(result),
  };
}
