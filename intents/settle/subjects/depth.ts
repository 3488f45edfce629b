import type { Reply } from '#answer/reply.ts';
import { list, rounded, sentence } from '#answer/say.ts';
import { cyclesAt } from '#engine/battery/life.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { decimals } from '#quantity/round.ts';
import { type Chemistry, chemistries } from '#rig/rig.ts';
import type { HeldMaxim, SideTaken } from '../../intent.ts';
import { chemistryName } from '../../words.ts';
import { nameOf } from '../claims.ts';

// "80 % of an AGM", "half at most": how far down people say that a battery may be taken.

/** The name under which a chat keeps who said it. */
export const depthMaxim = 'depth';

/** How far down somebody says that a battery may be taken. */
export interface DepthClaim {
  /** Undefined: of any battery. */
  readonly chemistry?: Chemistry;
  /** Share of the capacity that is taken out, %. */
  readonly usedPercent: number;
  /** Nobody told that share: it is only more, or less, than what was said before. */
  readonly isVague?: true;
}

/** A claim as a side that a chat keeps: "agm 80", "any ~50". */
export const depthSaid = ({ chemistry, usedPercent, isVague }: DepthClaim): string =>
  `${chemistry ?? 'any'} ${isVague ? '~' : ''}${decimals(usedPercent, 0)}`;

/** What a kept side says. */
export function depthOf(says: string): DepthClaim {
  const [kind = '', share = ''] = says.split(' ');
  return {
    chemistry: chemistries.find(one => one === kind),
    usedPercent: Number(share.replace('~', '')),
    ...(share.startsWith('~') && { isVague: true }),
  };
}

/** Up to so much of it, a battery is used as is usual; common practice. From so little on, it is used less than it stands. */
const usual = {
  lead: { least: 40, most: 55 },
  lithium: { least: 75, most: 90 },
} as const;

/** Whether a kept side says no more than half, or about that. */
export const isMild = (says: string): boolean => depthOf(says).usedPercent <= usual.lead.most;

type Sort = keyof typeof usual;
const sortOf = (chemistry: Chemistry): Sort => (chemistry === 'lfp' ? 'lithium' : 'lead');

interface Held extends DepthClaim {
  readonly who: string;
}

const isFair = ({ usedPercent }: DepthClaim, sort: Sort): boolean =>
  usedPercent >= usual[sort].least && usedPercent <= usual[sort].most;

const isPlural = (names: readonly string[]): boolean =>
  names.length > 1 || ['you', 'they'].includes(names[0] ?? '');
const be = (names: readonly string[]): string => (isPlural(names) ? 'are' : names[0] === 'I' ? 'am' : 'is');

/** "You can take out some 50 %": what is usual, of one kind. */
const usualOf = (chemistry: Chemistry): string =>
  chemistry === 'lfp'
    ? 'about 80 % of a lithium is the usual, down to 10 or 20 % left'
    : `about half of ${chemistry === 'agm' ? 'an AGM' : `a ${chemistryName(chemistry)} battery`} is the usual limit`;

/** How much taking more, or less, than is usual costs. */
function costOf(chemistry: Chemistry, claims: readonly DepthClaim[]): string {
  const told = claims.filter(({ isVague }) => !isVague).map(({ usedPercent }) => usedPercent);
  const deepest = Math.max(...told);
  const mildest = Math.min(...told);
  if (chemistry === 'lfp') {
    if (deepest > usual.lithium.most)
      return 'To its BMS’s cut-off does no harm now and then; as a habit it costs cycles, and you run out without warning.';
    return mildest < usual.lithium.least
      ? `Taking out only ${decimals(mildest, 0)} % is gentle, and leaves a good part of what you paid for unused.`
      : 'The last tenth or two is a reserve: its volts drop off there without much warning.';
  }
  const share = Number.isFinite(deepest) && deepest > usual.lead.most ? deepest : 80;
  const cycles = (percent: number): string => rounded(cyclesAt(chemistry, percent / 100));
  return `${decimals(share, 0)} % once won’t kill it; each time, it lasts about ${cycles(share)} cycles against ${cycles(50)} at half.`;
}

/** Who has it, of one kind of battery. */
function ofOneKind(chemistry: Chemistry, claims: readonly Held[], from: string): Reply {
  const sort = sortOf(chemistry);
  const middle = 100 * chemistryRow(chemistry).depth[0];
  const apart = ({ usedPercent }: DepthClaim): number => Math.abs(usedPercent - middle);
  const nearest = claims.toSorted((a, b) => apart(a) - apart(b));
  const [first] = nearest;
  const right = nearest.filter(one => isFair(one, sort));
  const names = (some: readonly Held[]): string[] => [...new Set(some.map(({ who }) => nameOf(who, from)))];
  const said = usualOf(chemistry);
  const isAnyDeep = claims.some(({ usedPercent }) => usedPercent > usual[sort].most);
  const opening = (): string => {
    if (!first) return `${sentence(said)}.`;
    if (right.length > 0) {
      const who = names(right);
      return right.length === claims.length && who.length > 1
        ? `${who.length === 2 ? 'Both' : 'All'} can be right: ${said}.`
        : `${sentence(list(who))} ${be(who)} right: ${said}.`;
    }
    const who = names([first]);
    if (claims.length === 1)
      return isAnyDeep ? `Not as a habit: ${said}.` : `That is on the safe side: ${said}.`;
    return `${sentence(list(who))} ${be(who)} nearest: ${said}.`;
  };
  return {
    headline: opening(),
    lines: [costOf(chemistry, claims)],
    verdict: null,
    ...(first && claims.length > 1 && { figures: { closest: { value: first.who } } }),
    cautions: [],
    next: ['how many cycles?'],
  };
}

const bothKinds = 'Lead-acid and AGM give about half of their Ah, lithium 80 to 90 %.';

/** Who is right of which kind, where nobody named one or each another. */
function ofBothKinds(claims: readonly Held[], from: string): Reply {
  const names = (some: readonly Held[]): string[] => [...new Set(some.map(({ who }) => nameOf(who, from)))];
  const may = ({ chemistry }: DepthClaim, sort: Sort): boolean =>
    chemistry === undefined || sortOf(chemistry) === sort;
  const lead = names(claims.filter(one => may(one, 'lead') && one.usedPercent <= usual.lead.most));
  const lithium = names(claims.filter(one => may(one, 'lithium') && one.usedPercent > usual.lead.most));
  const parts = [
    ...(lead.length > 0 ? [`${list(lead)} ${be(lead)} right of lead-acid and AGM`] : []),
    ...(lithium.length > 0
      ? [`${list(lithium)} ${lead.length > 0 ? '' : `${be(lithium)} right `}of lithium`]
      : []),
  ];
  return {
    headline: parts.length > 0 ? `${sentence(parts.join(', '))}. ${bothKinds}` : bothKinds,
    lines: ['Below half lead-acid wears out early; lithium’s BMS only cuts off at the very end.'],
    verdict: null,
    cautions: [],
    next: ['AGM or lithium?'],
  };
}

/** Whether a battery may be taken so far down. */
function answerAsked(claim: DepthClaim): Reply {
  const { chemistry, usedPercent } = claim;
  const sort = chemistry && sortOf(chemistry);
  const isDeep = usedPercent > usual[sort ?? 'lead'].most;
  const said = isDeep ? 'Not as a habit' : 'Yes';
  return chemistry
    ? {
        headline: `${said}: ${usualOf(chemistry)}.`,
        lines: [costOf(chemistry, [claim])],
        verdict: isDeep ? 'no' : 'yes',
        cautions: [],
        next: ['how many cycles?'],
      }
    : { ...ofBothKinds([], ''), headline: isDeep ? `It depends. ${bothKinds}` : `Yes. ${bothKinds}` };
}

/** Words for an argument about how far a battery may be taken down: settled by its kind alone. */
export function answerDepth({ sides, of }: HeldMaxim, from: string): Reply {
  if (of !== undefined && sides.length === 0) return answerAsked(depthOf(of));
  const claims = sides.map(({ who, says }: SideTaken): Held => ({ who, ...depthOf(says) }));
  const kinds = new Set(claims.map(({ chemistry }) => chemistry));
  const [kind] = kinds;
  return kinds.size === 1 && kind !== undefined ? ofOneKind(kind, claims, from) : ofBothKinds(claims, from);
}
