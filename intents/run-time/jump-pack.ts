import type { Reply } from '#answer/reply.ts';
import { duration } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { amountsOf } from '../figures-told.ts';
import { isSpotted } from '../spotting.ts';
import type { WorkedBeside } from '../worked-beside.ts';

/** Its mAh are told at the volts of one cell, and so much of them comes out. Common practice, as of power banks. */
const pack = { cellV: 3.7, share: 0.85 } as const;
/** No jump pack holds more than that, Ah at its cells. */
const mostAh = 60;
/** What a phone and a laptop take for a charge, Wh. Common practice. */
const chargeWh: Readonly<Record<string, number>> = { phone: 15, tablet: 30, laptop: 60 };
/** A night, h. */
const nightH = 8;
/** Of what cools by a compressor, the share of the time that it runs; the others never stop. Common practice. */
const compressorShare = 0.35;

const named = [
  'jump_pack|jumppack|jump_starter|jumpstarter|jump_start_pack|starter_pack|booster_pack|jump_box',
];

const ampHours = (mentions: readonly Mention[]): number | undefined => {
  const [size, other] = amountsOf(mentions, 'charge').map(({ value }) => value);
  return size !== undefined && other === undefined && size <= mostAh ? size : undefined;
};

const lasting = (hours: number): string => `about ${duration(hours).replace(/^about /, '')}`;

/** What runs, with its watts as told, else as usual. */
function wattsOf({ name, powerW, currentA }: Load, mentions: readonly Mention[]): number | undefined {
  const told = powerW ?? (currentA === undefined ? undefined : 12 * currentA);
  return told ?? amountsOf(mentions, 'power')[0]?.value ?? applianceOf(name)?.powerW[1];
}

function answer({ loads = [] }: Facts, mentions: readonly Mention[], words: readonly string[]): Reply {
  const capacityAh = present(ampHours(mentions));
  const heldWh = capacityAh * pack.cellV;
  const givesWh = heldWh * pack.share;
  const size = `its ${decimals(capacityAh * 1000, 0)} mAh are ${decimals(heldWh, 0)} Wh at the 3.7 V of its cells`;
  const lines = [
    `About ${decimals(givesWh, 0)} Wh of that come out. Most jump packs give USB, and no steady 12 V.`,
    'Keep it charged for the engine: once it has run gear it starts nothing.',
  ];
  const [load] = loads;
  const row = load && applianceOf(load.name);
  const perCharge = row && chargeWh[row.id];
  if (load && perCharge !== undefined)
    return {
      headline: `About ${plain(Math.max(0.5, Math.floor((2 * givesWh) / perCharge) / 2))} ${load.name} charges: ${size}.`,
      lines,
      verdict: null,
    };
  const watts = load && wattsOf(load, mentions);
  if (!load || watts === undefined) return { headline: `Phones and a light: ${size}.`, lines, verdict: null };
  const hours = givesWh / watts;
  const cools = row?.setPointC !== undefined;
  const isNight = isSpotted(words, ['night|overnight|all_night']);
  const opening = isNight && hours < nightH ? 'No, not a night: ' : cools || hours < 1 ? 'Hardly: ' : '';
  const first = `${opening}${lasting(hours)} at ${decimals(watts, 0)} W; ${size}.`;
  return {
    headline: `${first.charAt(0).toUpperCase()}${first.slice(1)}`,
    lines: cools
      ? [
          `A plug-in (thermoelectric) box never stops; a compressor on a third of the time gets ${lasting(hours / compressorShare)}.`,
          ...lines,
        ]
      : lines,
    verdict: null,
  };
}

/** What a jump pack runs, by its mAh: they are no amp hours of 12 V. */
export const jumpPack: WorkedBeside = {
  name: 'jump-pack-by-size',
  spots: [
    `${named[0]} -flat -wont_start -cant_start -clamps -start_the -start_my -start_a -charge_it -recharge`,
  ],
  when: ({ recognised: { mentions } }) => ampHours(mentions) !== undefined,
  takes: ['loads', 'batteries'],
  reply: (facts, { parsed: { recognised } }) => answer(facts, recognised.mentions, recognised.words),
};
