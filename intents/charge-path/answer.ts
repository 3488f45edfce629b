import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import { decimals } from '#quantity/round.ts';
import type { RequestContext } from '../intent.ts';
import type { ChargePath } from './compute.ts';

const because = {
  lithium: 'lithium needs its own charging volts, and pulls too much through an isolator',
  'smart-alternator': 'a smart alternator drops its volts on the road, so an isolator drops out',
  'unlike-lead': 'gel wants another voltage than the starter battery',
  'long-run': 'a long run loses volts, and it lifts them again at the far end',
  'fixed-alternator': 'the alternator holds a fixed voltage',
  'same-kind': 'both batteries charge at the same volts, so the alternator suits them both',
  'short-run': 'the run is short, so little is lost on the way',
  'alternator-unknown': 'it suits any alternator, also the many that vary their volts',
  'solar-input': 'many can take your panel as well',
} as const;

/** The size that suits the battery told, where none of a charger was told. */
const suiting = ({ sizeA, toldA }: ChargePath): string | undefined =>
  sizeA === undefined || toldA !== undefined
    ? undefined
    : `About ${decimals(sizeA, 0)} A suits that battery.`;

/** Where the fuses go, and what the charger takes from the front: a fifth to a third more than it gives. */
function fuses({ sizeA, toldA }: ChargePath): string {
  const chargerA = toldA ?? sizeA;
  const takes =
    chargerA === undefined
      ? 'it draws a fifth to a third more amps than it gives'
      : `${toldA === undefined ? 'it' : `your ${decimals(toldA, 0)} A one`} draws about ${decimals(1.2 * chargerA, 0)}–${decimals((4 / 3) * chargerA, 0)} A`;
  return `Fuse it at both batteries: from the starter battery ${takes}.`;
}

/** Words that ask whether a charger is the right one. */
const ofSize: ReadonlySet<string> = new Set(
  'big bigger large small smaller size enough much suit suits'.split(' '),
);

/** Whether the charger told suits the battery told: a bigger one wears it or trips its BMS, a smaller one only takes longer. */
function sizeOf({ sizeA, toldA, mostA }: ChargePath): string | undefined {
  if (sizeA === undefined || toldA === undefined || mostA === undefined) return undefined;
  const [told, usual, most] = [toldA, sizeA, mostA].map(amps => `${decimals(amps, 0)} A`);
  if (toldA > 1.05 * mostA)
    return `Too big: ${told} is more than that battery should take (about ${most}). About ${usual} suits it.`;
  return toldA > sizeA
    ? `${told} is the most that battery should see (about ${most}); ${usual} suits it well.`
    : `${told} suits that battery${toldA < 0.6 * sizeA ? `, it only takes longer than ${usual} would` : ''}.`;
}

/** What the year of the vehicle says of its alternator. */
function ofYear(year: number, { reasons }: ChargePath): string {
  if (reasons.includes('smart-alternator'))
    return `Most of ${year} have a smart alternator; a relay drops out on it.`;
  return reasons.includes('fixed-alternator')
    ? `A ${year} one most likely holds a fixed voltage.`
    : `A ${year} one may be either: over 13.5 V all through a drive is a fixed alternator.`;
}

/** Words for isolator or DC-DC charger. */
export function answerChargePath(
  result: ChargePath,
  { parsed }: Pick<RequestContext, 'parsed'>,
  year?: number,
): Reply {
  const { recommendation, reasons } = result;
  const isDcdc = recommendation === 'dcdc';
  const [first, ...rest] = reasons.map(reason => because[reason]);
  const isUnsure = reasons.includes('alternator-unknown');
  const lines = [
    ...(year === undefined ? [] : [ofYear(year, result)]),
    ...(rest.length > 0 ? [`Also: ${rest.join('; ')}.`] : []),
    isDcdc
      ? fuses(result)
      : 'It rarely fills the battery right up: add solar or a mains charger now and then. Fuse both ends.',
    isUnsure
      ? 'With an old fixed-voltage alternator and the same type of battery, an isolator would do.'
      : isDcdc
        ? ''
        : 'If you change to lithium or to a newer vehicle, go DC-DC.',
  ].filter(Boolean);
  const path = sentence(`${isDcdc ? 'DC-DC charger' : 'An isolator will do'}: ${first}.`);
  const { words } = parsed.recognised;
  const told = isDcdc ? sizeOf(result) : undefined;
  const suits = isDcdc ? suiting(result) : undefined;
  const size = told ?? suits;
  const isSizeAsked = told
    ? words.some(word => ofSize.has(word))
    : suits !== undefined && words.includes('size');
  const chargerA = decimals(result.toldA ?? result.sizeA ?? 25, 0);
  return {
    headline: size && isSizeAsked ? size : path,
    lines: isSizeAsked ? [path, ...lines] : size ? [size, ...lines] : lines,
    verdict: null,
    figures: { recommendation: { value: recommendation } },
    cautions: result.isLithium ? ['fuse-at-battery', 'lithium-cold'] : ['fuse-at-battery'],
    next: isDcdc
      ? [`what fuse for a ${chargerA}A dcdc?`, `what cable for a ${chargerA}A dcdc, 5 m?`]
      : ['what cable for 30A over 3 m?', 'agm or lithium?'],
  };
}
