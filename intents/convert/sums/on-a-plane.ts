import type { Reply } from '#answer/reply.ts';
import { plain } from '#quantity/round.ts';
import { powerBankCellV } from '#rig/cell.ts';
import type { Facts } from '#rig/rig.ts';
import { isSpotted } from '../../spotting.ts';

const ofFlying: readonly string[] = [
  'fly|flying|flight|plane|aeroplane|airplane|airline|airlines|hand_luggage|cabin_bag',
];

/** Watt hours that airlines take in hand luggage unasked, and at most with their leave. IATA, dangerous goods rules. */
const flown = { freeWh: 100, mostWh: 160 } as const;
/** Above this an Ah figure is no power bank's. */
const mostBankAh = 60;

const says = ({ batteries: [bank] = [] }: Facts): string => {
  const ah = bank?.capacityAh;
  const wh = bank?.energyWh ?? (ah !== undefined && ah <= mostBankAh ? ah * powerBankCellV : undefined);
  if (wh === undefined)
    return 'Up to 100 Wh (27,000 mAh), in hand luggage only; up to 160 Wh if the airline agrees.';
  const holds = `it holds about ${plain(wh)} Wh`;
  if (wh <= flown.freeWh)
    return `Yes, in hand luggage only: ${holds}, and up to ${flown.freeWh} Wh is allowed.`;
  return wh <= flown.mostWh
    ? `Only if the airline agrees: ${holds}, more than the ${flown.freeWh} Wh that go unasked.`
    : `No: ${holds}, and over ${flown.mostWh} Wh no passenger may carry.`;
};

/** Whether a power bank may come aboard; undefined: no flight is spoken of. */
export const onAPlane = (facts: Facts, words: readonly string[]): Reply | undefined =>
  isSpotted(words, ofFlying)
    ? {
        headline: says(facts),
        lines: [
          'Cover its contacts, and never a swollen or recalled one. The airline’s own rules come first.',
        ],
        verdict: null,
        next: ['100Ah in Wh'],
      }
    : undefined;
