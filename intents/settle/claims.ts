import { sentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { areaOfGauge } from '#quantity/gauge.ts';
import { toBase, unitOf } from '#quantity/quantity.ts';
import type { Dimension } from '#quantity/units.ts';
import type { Claim } from '#rig/rig.ts';
import type { Heard } from './dispute.ts';

/** Claims in base units; one without a unit has that of its neighbours. */
export function hear(claims: readonly Claim[]): Heard[] {
  const usual = claims.find(c => unitOf(c.unit))?.unit;
  return claims.flatMap(({ who, value, unit }) => {
    const symbol = unitOf(unit) ? unit : usual;
    const row = symbol === undefined ? undefined : unitOf(symbol);
    if (!row) return [];
    const said = { who, said: value, unit: present(symbol) };
    // Gauges are compared by their copper: a bigger number is a thinner wire.
    if (row.dimension === 'gauge') return [{ ...said, dimension: 'area', value: areaOfGauge(value) }];
    return value > 0 ? [{ ...said, dimension: row.dimension, value: toBase(value, row) }] : [];
  });
}

/** The dimension that most claims have; the first where it is even. */
export function dimensionOf(claims: readonly Heard[]): Dimension | undefined {
  const count = (dimension: Dimension): number => claims.filter(c => c.dimension === dimension).length;
  return [...claims].sort((a, b) => count(b.dimension) - count(a.dimension))[0]?.dimension;
}

/** Claims in one dimension: Ah and Wh are bridged by the nominal voltage, others are left out. */
export function inDimension(claims: readonly Heard[], dimension: Dimension, voltageV: number): Heard[] {
  return claims.flatMap(claim => {
    if (claim.dimension === dimension) return [claim];
    if (claim.dimension === 'energy' && dimension === 'charge')
      return [{ ...claim, dimension, value: claim.value / voltageV }];
    if (claim.dimension === 'charge' && dimension === 'energy')
      return [{ ...claim, dimension, value: claim.value * voltageV }];
    return [];
  });
}

const speaker: readonly string[] = ['me', 'i', 'my', 'mine', 'we', 'us', 'our'];
const kin: readonly string[] =
  'partner wife husband brother sister dad father mum mom mother son daughter mate friend boss uncle aunt neighbour neighbor boyfriend girlfriend cousin missus'.split(
    ' ',
  );
const strangers: readonly string[] =
  'shop seller salesman dealer bloke guy label sticker website internet forum manual book electrician mechanic'.split(
    ' ',
  );

/** Whether a claim is the speaker's own. */
export const isSpeaker = (who: string, from: string): boolean =>
  speaker.includes(who.toLowerCase()) || who.toLowerCase() === from.toLowerCase();

/** A claimant in a sentence: "you", "I" for the bot itself, "he", "your partner", "the shop", "Ness". */
export function nameOf(who: string, from: string): string {
  const lower = who.toLowerCase();
  // "My mate", as the writer calls him.
  if (/^(?:my|our) ./.test(lower)) return `your ${who.slice(who.indexOf(' ') + 1)}`;
  const own = `${from.toLowerCase()}'s `;
  if (lower.startsWith(own) && lower.length > own.length) return `your ${who.slice(own.length)}`;
  if (isSpeaker(who, from)) return 'you';
  if (lower === 'bot') return 'I';
  if (['he', 'she', 'they', 'it', 'somebody'].includes(lower)) return lower;
  // Said to somebody whom the message doesn't name.
  if (lower === 'you' || lower === 'your') return 'the other';
  // "Brother in law", "bloke at the shop": whom the first word names.
  const [first = ''] = lower.split(' ');
  if (kin.includes(first)) return `your ${lower}`;
  if (strangers.includes(first)) return `the ${lower}`;
  return sentence(who);
}

const owns = new Map([
  ['I', 'my'],
  ['you', 'your'],
  ['he', 'his'],
  ['she', 'her'],
  ['they', 'their'],
  ['it', 'its'],
]);

/** "Ness's", "your", "his". */
export function ownerOf(who: string, from: string): string {
  const name = nameOf(who, from);
  return owns.get(name) ?? `${name}'s`;
}
