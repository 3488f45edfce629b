import type { Reply } from '#answer/reply.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { inverterEfficiency, inverterSizesW } from '#engine/inverter/efficiency.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';

const asksBiggest: readonly string[] = [
  'inverter how_big|biggest|largest|what_size|max|most|let|allow|allows|support',
];

/** Words that ask for the watts that a battery gives at a moment. */
const asksWatts: readonly string[] = [
  'how_many|how_much|what|most|max watts|power battery|give|deliver|supply|at_once|at_a_time -hours -a_day -per_day -how_long -panel',
];

/** The biggest inverter that a battery can feed flat out, where nothing tells what runs; undefined: that isn't asked. */
export function biggestFor(facts: Facts, { parsed }: Pick<RequestContext, 'parsed'>): Reply | undefined {
  const { words } = parsed.recognised;
  const isOfInverter = isSpotted(words, asksBiggest);
  if (facts.loads?.length || facts.inverter?.powerW || !(isOfInverter || isSpotted(words, asksWatts)))
    return undefined;
  const bank = bankIn(facts);
  const limitA =
    facts.batteries?.find(one => one.maxCurrentA)?.maxCurrentA ?? (bank && limitsOf(bank).dischargeA);
  if (limitA === undefined) return undefined;
  const voltageV = bank && bank.voltageV > 18 ? 24 : 12;
  const mostW = limitA * voltageV * inverterEfficiency.value;
  const size = inverterSizesW.findLast(watts => watts <= mostW);
  if (size === undefined) return undefined;
  const lost = `${plain(limitA)} A at ${voltageV} V is about ${decimals(mostW, -1)} W after the inverter’s loss`;
  return {
    headline: isOfInverter
      ? `Up to a ${decimals(size, 0)} W one: ${lost}.`
      : `About ${decimals(limitA * voltageV, -1)} W at once: ${plain(limitA)} A at ${voltageV} V, or ${decimals(mostW, -1)} W through an inverter.`,
    lines: [
      `A bigger one is fine as long as what runs on it stays under ${decimals(mostW, -1)} W: past that the battery cuts out or sags.`,
    ],
    verdict: null,
    figures: { mostPower: exactFigure(mostW, 'W') },
    cautions: mostW > 900 ? ['big-current'] : [],
    next: [`what cable for a ${decimals(size, 0)}W inverter, 1.5 m?`],
  };
}
