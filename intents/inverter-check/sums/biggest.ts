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

/** The biggest inverter that a battery can feed flat out, where nothing tells what runs; undefined: that isn't asked. */
export function biggestFor(facts: Facts, { parsed }: Pick<RequestContext, 'parsed'>): Reply | undefined {
  if (facts.loads?.length || facts.inverter?.powerW || !isSpotted(parsed.recognised.words, asksBiggest))
    return undefined;
  const bank = bankIn(facts);
  const limitA =
    facts.batteries?.find(one => one.maxCurrentA)?.maxCurrentA ?? (bank && limitsOf(bank).dischargeA);
  if (limitA === undefined) return undefined;
  const voltageV = bank && bank.voltageV > 18 ? 24 : 12;
  const mostW = limitA * voltageV * inverterEfficiency.value;
  const size = inverterSizesW.findLast(watts => watts <= mostW);
  if (size === undefined) return undefined;
  return {
    headline: `Up to a ${decimals(size, 0)} W one: ${plain(limitA)} A at ${voltageV} V is about ${decimals(mostW, -1)} W after the inverter’s loss.`,
    lines: [
      `A bigger one is fine as long as what runs on it stays under ${decimals(mostW, -1)} W: past that the battery cuts out or sags.`,
    ],
    verdict: null,
    figures: { mostPower: exactFigure(mostW, 'W') },
    cautions: mostW > 900 ? ['big-current'] : [],
    next: [`what cable for a ${decimals(size, 0)}W inverter, 1.5 m?`],
  };
}
