import type { IntentName } from '#answer/answer.ts';
import { emergencyText, forbidden, hazardAnswer, warningLines } from '#answer/hazards.ts';
import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { decimals } from '#quantity/round.ts';
import { emergencies, type HazardCode } from '#rig/hazard-codes.ts';
import type { Stated } from '#rig/rig.ts';
import { overLimit } from './over-limit.ts';

/** What a danger does to the answer that it stands in. */
interface Rule {
  /** Questions to which the danger is the answer: no yes and no "tight", and nothing is asked back. */
  readonly refuses: 'all' | readonly IntentName[];
  /** Questions whose figures are not given at all, unless `unless` holds. */
  readonly withholds?: readonly IntentName[];
  readonly unless?: (facts: Stated) => boolean;
  /** Questions that its own words answer with no. */
  readonly denies?: readonly IntentName[];
  /** General cautions that the danger's own words say better. */
  readonly covers?: readonly CautionCode[];
}

const charging: readonly IntentName[] = ['charge-time', 'charge-path', 'solar-yield', 'generator', 'trip'];
const wiring: readonly IntentName[] = ['cable-size', 'fuse-size', 'inverter-check', 'fault', 'unclear'];
const isCableTold = ({ cable }: Stated): boolean =>
  (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm) !== undefined;

/** By the "never" of each danger: what its answers hold back. Emergencies hold back everything. */
const rules: Readonly<Record<HazardCode, Rule>> = {
  'carbon-monoxide': { refuses: 'all' },
  'battery-fire': { refuses: 'all' },
  gas: { refuses: 'all' },
  'mains-wiring': {
    refuses: wiring,
    withholds: ['cable-size', 'fuse-size', 'list'],
    covers: ['mains-wiring'],
  },
  'mains-lead': {
    refuses: 'all',
    withholds: ['cable-size', 'fuse-size', 'list'],
    covers: ['mains-wiring'],
  },
  backfeed: { refuses: 'all', withholds: ['cable-size'], covers: ['backfeed', 'mains-wiring'] },
  // A load asks for more than its cable may have: only the cable names a size.
  'bigger-fuse': {
    refuses: wiring,
    withholds: ['fuse-size'],
    unless: isCableTold,
    covers: ['no-fuse', 'fuse-at-battery'],
  },
  'no-fuse': { refuses: wiring, covers: ['no-fuse', 'fuse-at-battery'] },
  'over-current': { refuses: 'all' },
  'cold-charge': { refuses: charging, withholds: ['charge-time', 'generator'], covers: ['lithium-cold'] },
  'generator-inside': { refuses: [...charging, 'unclear'], covers: ['carbon-monoxide'] },
  'mixed-parallel': {
    refuses: 'all',
    withholds: ['battery-bank'],
    denies: ['battery-bank'],
    covers: ['mixed-batteries'],
  },
  medical: { refuses: [], covers: ['medical'] },
  'jump-start': { refuses: 'all' },
  // Whether it still starts is judged by its own limit.
  'starter-flat': { refuses: ['run-time', 'fault'], covers: ['starter-reserve'] },
};

/** What an answer stands in. */
export interface Danger {
  readonly codes: readonly HazardCode[];
  readonly intent: IntentName;
  readonly facts: Stated;
  /** Whether the reply asks something back. */
  readonly isBack: boolean;
  /** What the message speaks of, as dangers go. */
  readonly concepts?: ReadonlySet<string>;
  /** Whether the warnings were said already, in the answer to the same message's first question. */
  readonly isSaid?: boolean;
  /** Whether it is asked if something can be done. */
  readonly isCheck?: boolean;
  /** Dangers that this talk was told of in full: what can be said of them shortly is. */
  readonly known?: readonly HazardCode[];
}

/** Whether somebody may be hurt now: then nothing is worked out, and nothing is kept. */
export const isEmergency = (codes: readonly HazardCode[]): boolean =>
  codes.some(code => emergencies.has(code));

/** As much in hand as a medical device asks for, common practice. */
const spare = 1.5;

/** A yes to a medical device only where it holds even with half as much again. */
function isSpare({ figures }: Reply, { durationH }: Stated): boolean {
  const runTime = figures?.runTime;
  return runTime !== undefined && 'low' in runTime && durationH !== undefined
    ? runTime.low >= spare * durationH
    : false;
}

/** A medical device that the battery carries, but not with as much in hand as it asks for: what it takes, and what would do. */
function closeCall({ figures, lines = [] }: Reply, { durationH = 0, batteries = [] }: Stated) {
  const { dailyUse, usableCapacity } = figures ?? {};
  if (!dailyUse || !usableCapacity || !('low' in dailyUse) || !('low' in usableCapacity))
    return { headline: 'Only just: too little to spare for a medical device.' };
  const takesAh = (dailyUse.value * durationH) / 24;
  const wantedAh = spare * takesAh;
  const [one, ...others] = batteries;
  const isOneFull =
    others.length === 0 &&
    one !== undefined &&
    (one.count ?? 1) === 1 &&
    (one.stateOfChargePercent ?? 100) === 100;
  const sizeAh = isOneFull ? ((one.capacityAh ?? 0) * wantedAh) / usableCapacity.value : 0;
  const size = sizeAh > 0 ? `: have about ${Math.ceil(sizeAh / 10) * 10} Ah of battery` : '';
  return {
    headline: `Only just: it takes ${decimals(takesAh, 0)} of the ${decimals(usableCapacity.value, 0)} Ah you can use, too little spare for a medical device.`,
    lines: [`With half as much again that is about ${decimals(wantedAh, 0)} Ah${size}.`, ...lines],
  };
}

const isRefusedBy = ({ refuses }: Rule, intent: IntentName): boolean =>
  refuses === 'all' || refuses.includes(intent);

/** An answer without its figures, where giving them makes it worse. */
const bare = ({ remember, rig }: Reply, isNo: boolean): Reply => ({
  headline: '',
  ...(isNo && { verdict: 'no' as const }),
  ...(remember && { remember }),
  ...(rig && { rig }),
});

/** What a yes or a "tight" says, without that word: behind a warning it is only a figure. */
const plainly = (headline: string): string => sentence(headline.replace(/^(?:Yes, |Yes: |Tight: )/, ''));

/** The body of an answer as the dangers leave it. */
function body(reply: Reply, { codes, intent, facts, isBack }: Danger): Reply {
  const own = codes.map(code => rules[code]);
  const isWithheld = own.some(
    ({ withholds, unless }) => withholds?.includes(intent) && unless?.(facts) !== true,
  );
  const isRefused = own.some(rule => isRefusedBy(rule, intent));
  const isDenied = own.some(({ denies }) => denies?.includes(intent));
  const wasYesNo = reply.verdict !== undefined && reply.verdict !== null;
  // Where a danger is seen the warning is the answer: nobody is told besides that there was no question.
  if (intent === 'unclear' && !isBack) return bare(reply, false);
  const isSoft = reply.verdict === 'yes' || reply.verdict === 'tight';
  // A cable that is only just enough is not enough: what would do is worth more than the general line.
  if (intent === 'cable-size' && codes[0] === 'over-current' && reply.verdict === 'tight')
    return {
      ...reply,
      verdict: 'no',
      headline: reply.headline.replace(/^Tight: /, 'No: '),
      lines: reply.lines?.slice(-2),
    };
  // A cable that would do does, once it has its fuse.
  if (intent === 'cable-size' && codes[0] === 'no-fuse' && isSoft && !isBack)
    return { ...reply, verdict: null, headline: plainly(reply.headline) };
  if (isWithheld || (isRefused && (isSoft || isBack))) return bare(reply, wasYesNo || isDenied);
  if (codes[0] === 'starter-flat' && isSoft) return { ...reply, headline: plainly(reply.headline) };
  if (codes.includes('medical') && reply.verdict === 'yes')
    return isSpare(reply, facts)
      ? { ...reply, headline: reply.headline.replace(/^Yes[:,] /, 'Enough, with half again to spare: ') }
      : { ...reply, verdict: 'tight', ...closeCall(reply, facts) };
  return reply;
}

/** What may stand in an answer with these dangers. */
const isAllowed =
  (codes: readonly HazardCode[]) =>
  (line: string): boolean =>
    line !== '' && forbidden(line, codes).length === 0;

/** The whole answer of an emergency: what to do now, whom to call. No figure, no button, nothing kept. */
function emergency({ codes, concepts }: Danger): Reply {
  const [headline, ...lines] = present(emergencyText(codes, concepts)).split('\n');
  return { headline: present(headline), lines };
}

/** Weakest parts of a rig by which a first line names the current that is too much. */
const ofCurrent: ReadonlySet<unknown> = new Set(['battery-current', 'inverter', 'cable', 'fuse']);

/** Whether the answer's own first line stands before the warning: a no, what would do, what a medical device comes to, gear that is noted. */
function isToldFirst(code: HazardCode, { headline, verdict, rig, figures = {}, instead }: Reply): boolean {
  if (code === 'medical') return rig !== undefined || Object.keys(figures).length > 0;
  const isNo = verdict === 'no' && headline.startsWith('No');
  if (code === 'starter-flat') return isNo || figures.runTime !== undefined;
  // A fuse that is said to be too big for its cable is denied with what the cable allows.
  if (code === 'no-fuse') return isNo && figures.fuseRating !== undefined;
  const isTrouble = ofCurrent.has(figures.weakest?.value) && !headline.startsWith('All sound');
  return code === 'over-current' && (isNo || isTrouble || headline === instead);
}

/** What a fault of a fuse says of a bigger one is said by its danger. */
const isSaidByDanger = (line: string, codes: readonly HazardCode[]): boolean =>
  codes.includes('bigger-fuse') && line.startsWith('No bigger fuse');

/** How many lines of the answer itself stand beside a warning: the rest would push it off a phone. */
const mostBeside = 3;

/**
 * A reply with the warnings of the dangers seen before it, without what they forbid. The one place where it is
 * decided what an answer with a danger in it must not say.
 */
export function safe(reply: Reply, danger: Danger): Reply {
  const { codes, facts, concepts, isSaid = false, isCheck = false, known = [] } = danger;
  if (codes.length === 0) return reply;
  if (isEmergency(codes)) return emergency(danger);
  const left = body(reply, danger);
  const main = hazardAnswer(present(codes[0]), concepts);
  const warned = (some: readonly HazardCode[]) => warningLines(some, concepts, known);
  // What a talk has had in full is not said again line by line.
  const isShort = main.shortly !== undefined && known.includes(main.code);
  const [advice, handover] = isShort ? [[], []] : [[main.instead], [main.defers]];
  const covered = new Set(codes.flatMap(code => rules[code].covers ?? []));
  const said = [left.headline, ...(left.lines ?? [])]
    .filter(isAllowed(codes))
    .filter(line => !isSaidByDanger(line, codes))
    .slice(0, mostBeside);
  const told = (): string[] => {
    if (isSaid) return said;
    const [own, ...others] = said;
    const first = present(codes[0]);
    const over = first === 'over-current' ? overLimit(left, facts, concepts) : undefined;
    const isOwnFirst = own !== undefined && own === left.headline && isToldFirst(first, left);
    if (over && (over.part === 'battery' || !isOwnFirst)) {
      // A no stands only before what is asked for a yes or no.
      const says = left.verdict === 'no' || isCheck ? `No: ${over.says}` : sentence(over.says);
      const rest = over.part === 'battery' ? [] : said;
      return [says, ...warned(codes.slice(1, 2)), ...rest, ...advice, ...handover];
    }
    if (!isOwnFirst)
      return first === 'over-current' && own !== undefined
        ? [...warned(codes.slice(0, 2)), own, ...advice, ...others, ...handover]
        : [...warned(codes.slice(0, 2)), ...advice, ...said, ...handover];
    // An answer that says no with its amps says it better than the general line does.
    const isSaidBetter = codes[0] === 'over-current' && left.verdict === 'no';
    const warnings = warned(codes.slice(isSaidBetter ? 1 : 0, 2));
    return [own, ...warnings, ...others, ...advice, ...handover];
  };
  const [headline = '', ...lines] = told();
  return {
    ...left,
    headline,
    lines,
    cautions: left.cautions?.filter(code => !covered.has(code)),
    next: left.verdict === 'no' || left.headline === '' ? [] : left.next,
  };
}
