import type { Reply } from '#answer/reply.ts';
import { likelyOf } from '#engine/explore.ts';
import { throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';

/** Words of mains that a site gives; none of an inverter or a generator. */
const onSite: readonly string[] = [
  'hookup|hook_up|shore_power|powered_site|site|pitch|pedestal|bollard|rv_outlet|campground_outlet -inverter -generator -genny -gennie',
];
/** What breakers of sites are made for, A. */
const breakers: ReadonlySet<number> = new Set([5, 6, 8, 10, 13, 15, 16, 20, 30, 32, 50]);

/** What a site's breaker carries against what is to run on it; undefined: no site's amps are told. */
export function onSitePower(facts: Facts, { parsed, mainsV }: RequestContext): Reply | undefined {
  const { words, mentions } = parsed.recognised;
  if (!isSpotted(words, onSite)) return undefined;
  const breakerA = mentions.find(
    ({ dimension, value }) => dimension === 'current' && breakers.has(value),
  )?.value;
  if (breakerA === undefined) return undefined;
  const loads = (parsed.facts.loads ? (facts.loads ?? []) : []).map(load => ({
    ...load,
    supply: 'ac' as const,
  }));
  const mostW = breakerA * mainsV;
  const outlet = { loads, mainsV };
  const runW = loads.length > 0 ? throughWatts(outlet, likelyOf(wattsAssumptions(outlet))) : 0;
  const site = `${plain(breakerA)} A at ${plain(mainsV)} V is ${decimals(mostW, 0)} W`;
  const figures = { sitePower: exactFigure(mostW, 'W') };
  const lines = [
    'A charger, a hot water heater or a fridge on mains counts too. Over it, the post’s breaker trips.',
  ];
  const next = ['60W in amps'];
  if (runW <= 0)
    return {
      headline: `${site}: all that runs at once must stay under it.`,
      lines,
      verdict: null,
      figures,
      next,
    };
  const verdict = runW > mostW ? 'no' : runW > 0.9 * mostW ? 'tight' : 'yes';
  const says = { yes: 'Yes', tight: 'Just', no: 'No' } as const;
  return {
    headline: `${says[verdict]}: together they take about ${decimals(runW, 0)} W, and ${site}.`.replace(
      'together they take',
      loads.length + (loads[0]?.count ?? 0) > 2 ? 'together they take' : 'it takes',
    ),
    lines,
    verdict,
    figures,
    next,
  };
}
