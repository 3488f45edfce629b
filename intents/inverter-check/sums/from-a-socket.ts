import type { Reply } from '#answer/reply.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';

const nominalV = 12;
/** What a dash socket gives for long, A, and where its fuse is near. Common practice. */
const socketA = { long: 8, most: 10 } as const;

/** Words of a vehicle's 12 V socket; none of an inverter. */
const ofSocket: readonly string[] = [
  'lighter|cigarette|cig|ciggy|cigar|dash|accessory_socket|car_socket -inverter -invertor -fuse',
];

/** What a thing takes from a vehicle's socket by its watts, told or typical; undefined where none is spoken of. */
export function fromASocket(facts: Facts, { parsed }: Pick<RequestContext, 'parsed'>): Reply | undefined {
  const [load, other] = parsed.facts.loads ? (facts.loads ?? []) : [];
  if (!load || other || parsed.facts.inverter || !isSpotted(parsed.recognised.words, ofSocket))
    return undefined;
  const powerW = load.powerW ?? applianceOf(load.name)?.powerW[1];
  const amps =
    load.powerW === undefined && load.currentA !== undefined
      ? load.count * load.currentA
      : powerW === undefined
        ? undefined
        : (load.count * powerW) / nominalV;
  if (amps === undefined) return undefined;
  const verdict = amps > socketA.most ? 'no' : amps > socketA.long ? 'tight' : 'yes';
  const gives = `a dash socket gives about ${socketA.long} A for long`;
  const headline = {
    yes: `Yes, if it has a 12 V lead: it takes about ${plain(amps)} A, and ${gives}.`,
    tight: `Only just: it takes about ${plain(amps)} A, and ${gives}.`,
    no: `No: it takes about ${plain(amps)} A, and ${gives}.`,
  } as const;
  return {
    headline: headline[verdict],
    lines: [
      verdict === 'no'
        ? 'That wants an inverter or a plug on a fused cable of its own, straight from the battery.'
        : 'With a mains plug only, it wants a small inverter besides. Many sockets are dead with the key off.',
    ],
    verdict,
    figures: { current: exactFigure(amps, 'A') },
    cautions: ['fuse-at-battery'],
    next: ['what cable for 15A over 5 m?'],
  };
}
