import { present } from '#basics/present.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import { amountsOf } from '../figures-told.ts';
import type { WorkedBeside } from '../worked-beside.ts';

/**
 * The share of its amp hours to which the current falls as a charge ends, held at absorption volts: 1 to 2 % on
 * lead-acid by common practice, 2 to 5 % on lithium (makers' usual cut-off at 0.05 C).
 */
const tail = { lead: { full: 0.02, says: '1 to 2 %' }, lithium: { full: 0.05, says: '2 to 5 %' } } as const;
/** Up to so many times that it is nearly there. */
const nearly = 2.5;
/** Volts of absorption, of a 12 V block. */
const absorptionV = { least: 13.9, most: 14.9 } as const;

interface Tail {
  readonly volts: number;
  readonly amps: number;
  readonly capacityAh: number;
  readonly isLithium: boolean;
}

/** Words behind amps that make them what a charger can give, and no current into the battery. */
const ofCharger: ReadonlySet<string> = new Set(
  'charger chargers dcdc dc controller mppt load fridge'.split(' '),
);

/** Volts of a charge, the one current into the battery, and its size; undefined where they aren't told so. */
function tailIn(mentions: readonly Mention[]): Tail | undefined {
  const [volts, ...otherVolts] = amountsOf(mentions, 'voltage').filter(
    ({ value }) => value > 12.5 && value !== 24,
  );
  const [amps, ...otherAmps] = amountsOf(mentions, 'current');
  const [size, ...otherSizes] = amountsOf(mentions, 'charge');
  if (!volts || !amps || !size || otherVolts.length + otherAmps.length + otherSizes.length > 0)
    return undefined;
  const blocks = Math.max(1, Math.round(volts.value / 13.8));
  const one = volts.value / blocks;
  const after = mentions[mentions.indexOf(amps) + 1]?.text ?? '';
  if (one < absorptionV.least || one > absorptionV.most || amps.isNegative || ofCharger.has(after))
    return undefined;
  const isLithium = mentions.some(({ kind, key }) => kind === 'chemistry' && key === 'lfp');
  return { volts: volts.value, amps: amps.value, capacityAh: size.value, isLithium };
}

function judged({ volts, amps, capacityAh, isLithium }: Tail): readonly [string, ...string[]] {
  const { full, says } = isLithium ? tail.lithium : tail.lead;
  const share = amps / capacityAh;
  const percent = share < 0.1 ? plain(share * 100) : decimals(share * 100, 0);
  const into = `${significant(amps, 2)} A into ${significant(capacityAh)} Ah is ${percent} %`;
  if (share <= full * 1.01)
    return [
      `Full: ${into}, and a charge ends at ${says}.${isLithium ? '' : ' Let it go to float.'}`,
      isLithium
        ? 'It needs no float. Set a monitor to 100 % now.'
        : `Another hour at ${significant(volts, 3)} V does no harm. Set a monitor to 100 % now.`,
    ];
  const until = `about ${plain(full * capacityAh)} A`;
  return share <= nearly * full
    ? [
        `Nearly: ${into}. Give it longer, till it takes ${until} (${says}).`,
        'An hour or two more, as a rule. Something running besides makes the amps look too many.',
      ]
    : [
        `Not yet: ${into}. It is full when it takes ${until} (${says}).`,
        'Keep it on: the last part goes slowly, two to four hours on lead-acid. Take off what runs besides.',
      ];
}

/** Whether a charge is done, by the current that still goes in at the volts of absorption. */
export const tailCurrent: WorkedBeside = {
  name: 'tail-current',
  spots: [
    'full|done|finished|charged|complete|stop_charging|stop_now|longer|enough|pull_the_plug -how_long -when -hours -what_should -why',
  ],
  when: ({ recognised: { mentions } }) => tailIn(mentions) !== undefined,
  takes: [],
  reply: (_facts, { parsed: { recognised } }) => {
    const [headline, ...lines] = judged(present(tailIn(recognised.mentions)));
    return { headline, lines, verdict: null, next: ['what is float?'] };
  },
};
