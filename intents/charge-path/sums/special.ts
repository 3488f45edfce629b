import type { Reply } from '#answer/reply.ts';
import { bankIn, bankOfOne } from '#engine/battery/bank.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { dcdcSizeFor } from '#engine/charging/path.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { overVolts } from '../../over-volts.ts';
import { isSpotted } from '../../spotting.ts';
import type { ChargePath } from '../compute.ts';

/** Share of an alternator's rating that it gives for long without running hot. Common practice. */
const alternatorShare = 0.5;
/** A DC-DC charger draws a third more than it gives, at most. */
const drawnShare = 4 / 3;

const asked = {
  alternator: [
    'alternator ok|okay|fine|alright|enough|too_much',
    'alternator cook*|burn*|cope*|too_big|handle*|overheat*|hurt|kill*|strain*|manage|overload*|damage*|up_to|suffer|pull|sensible|draw|big_enough|much',
  ],
  which: ['or|which|better|buy -isolator -relay -vsr'],
  size: [
    'what|which|how|right size|big|many|amp|amps dcdc|dc_dc|dc_to_dc|b2b|charger -cable -fuse -wire -alternator',
    'what_size|how_big dcdc|dc|b2b -cable -fuse',
  ],
} as const;

const round5 = (amps: number): number => Math.round(amps / 5) * 5;

/** What an alternator can be asked for, by its rating or by the charger told. */
function ofAlternator({ alternatorA }: Facts, { toldA }: ChargePath): Reply | undefined {
  const spareA = alternatorA === undefined ? undefined : alternatorShare * alternatorA;
  const drawnA = toldA === undefined ? undefined : drawnShare * toldA;
  const idle = 'At idle in the heat it gives about a third: let a big charger work on the road.';
  if (spareA !== undefined && drawnA !== undefined && toldA !== undefined)
    return {
      headline:
        drawnA <= spareA
          ? `Yes: a ${plain(toldA)} A DC-DC draws up to ${decimals(drawnA, 0)} A, within half of its ${plain(alternatorA ?? 0)} A.`
          : `Too much for long: ${decimals(drawnA, 0)} A is more than half of its ${plain(alternatorA ?? 0)} A.`,
      lines: [idle],
      verdict: drawnA <= spareA ? 'yes' : 'no',
      figures: { spareCurrent: exactFigure(spareA, 'A') },
      cautions: ['fuse-at-battery'],
    };
  if (spareA !== undefined)
    return {
      headline: `About ${decimals(round5(spareA), 0)} A for long: half of its ${plain(alternatorA ?? 0)} A. The rest is for the vehicle.`,
      lines: [
        idle,
        `That is a DC-DC charger of up to ${decimals(Math.floor(spareA / drawnShare / 5) * 5, 0)} A.`,
      ],
      verdict: null,
      figures: { spareCurrent: exactFigure(spareA, 'A') },
      cautions: ['fuse-at-battery'],
    };
  if (drawnA === undefined || toldA === undefined) return undefined;
  const neededA = Math.ceil(drawnA / alternatorShare / 10) * 10;
  return {
    headline: `With an alternator of ${decimals(neededA, 0)} A or more: a ${plain(toldA)} A DC-DC draws up to ${decimals(drawnA, 0)} A.`,
    lines: [
      'Half its rating is what one gives for long; most vehicles have 80 to 150 A, on its plate.',
      idle,
    ],
    verdict: null,
    figures: { neededRating: exactFigure(neededA, 'A') },
    cautions: ['fuse-at-battery'],
  };
}

/** What DC-DC charger, by the battery; without one for a usual 100 Ah. */
function ofSize({ sizeA, toldA }: ChargePath): Reply | undefined {
  if (toldA !== undefined) return undefined;
  const usual = (chemistry: 'agm' | 'lfp'): number => dcdcSizeFor(bankOfOne({ capacityAh: 100, chemistry }));
  const headline =
    sizeA === undefined
      ? `About ${usual('agm')} A for 100 Ah: a quarter of the battery’s Ah at most, 40 or 50 A for 200 Ah.`
      : `A ${decimals(sizeA, 0)} A DC-DC suits that battery.`;
  const drawn = sizeA ?? usual('lfp');
  return {
    headline,
    lines: [
      `Fuse it at both batteries: a ${decimals(drawn, 0)} A one draws about ${decimals(1.2 * drawn, 0)}–${decimals(drawnShare * drawn, 0)} A.`,
      'It should draw no more than half of what the alternator is rated for.',
    ],
    verdict: null,
    figures: { chargerCurrent: exactFigure(drawn, 'A') },
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 25A dcdc?', 'what cable for a 25A dcdc, 5 m?'],
  };
}

/** Which of two DC-DC chargers, by what the battery takes and the alternator can spare. */
function ofTwo(facts: Facts, { sizeA }: ChargePath): Reply | undefined {
  const told = (facts.chargers ?? []).flatMap(({ currentA }) => (currentA === undefined ? [] : [currentA]));
  const [least, most] = [Math.min(...told), Math.max(...told)];
  if (told.length !== 2 || least === most || sizeA === undefined) return undefined;
  const bank = bankIn(facts);
  const limitA = bank && limitsOf(bank).chargeA;
  if (limitA === undefined) return undefined;
  const isMostFine = most <= limitA;
  const neededA = Math.ceil((drawnShare * (isMostFine ? most : least)) / alternatorShare / 10) * 10;
  return {
    headline: isMostFine
      ? `The ${plain(most)} A one: ${plain(bank?.capacityAh ?? 0)} Ah takes up to ${plain(limitA)} A, and it fills it sooner.`
      : `The ${plain(least)} A one: ${plain(most)} A is more than the ${plain(limitA)} A that this battery should take.`,
    lines: [
      `It wants an alternator of ${decimals(neededA, 0)} A or more${isMostFine ? `; with less, take the ${plain(least)} A one` : ''}.`,
    ],
    verdict: null,
    figures: { chargerCurrent: exactFigure(isMostFine ? most : least, 'A') },
    cautions: ['fuse-at-battery'],
    next: [`what fuse for a ${plain(isMostFine ? most : least)}A dcdc?`],
  };
}

/** What is asked of a figure beside the choice: the alternator's, the charger's size, volts that are too high. */
export function answerSpecial(facts: Facts, result: ChargePath, setting: RequestContext): Reply | undefined {
  const over = setting.recalled.has('volts') ? undefined : overVolts(facts);
  if (over) return over;
  const two = isSpotted(setting.parsed.recognised.words, asked.which) ? ofTwo(facts, result) : undefined;
  if (two) return two;
  if (isSpotted(setting.parsed.recognised.words, asked.alternator)) {
    const reply = ofAlternator(facts, result);
    if (reply) return reply;
  }
  return isSpotted(setting.parsed.recognised.words, asked.size) ? ofSize(result) : undefined;
}
