import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { list, rounded, sentence, span } from '#answer/say.ts';
import { fromBase, symbolOf, unitOf } from '#quantity/quantity.ts';
import type { Range } from '#quantity/range.ts';
import { significant } from '#quantity/round.ts';
import { describeRig } from '../describe.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { bestBySize, headlineBySize } from './by-size.ts';
import { isSpeaker, nameOf, ownerOf } from './claims.ts';
import type { Settled } from './compute.ts';
import type { Finding, Heard } from './dispute.ts';
import { judge } from './judge.ts';

type Found = Extract<Settled, { kind: 'found' }>;

function are(name: string): string {
  if (name === 'I') return 'am';
  return name === 'you' || name === 'they' ? 'are' : 'is';
}

/** Who asks, for "you" and "your"; nobody where the message tells that name's claim as another's. */
const asker = ({ from, parsed }: RequestContext): string =>
  parsed.claims.some(({ who }) => who.toLowerCase() === from.toLowerCase()) ? '' : from;

/** "4 days", as it was said. */
const claimed = ({ said, unit }: Heard): string =>
  `${significant(said, 4)} ${said === 1 ? unit.replace(/s$/, '') : unit}`;

const dayH = 24;
/** Less than so much of a unit is told in a smaller one: "0.2 week" is 1.6 days. */
const leastOfUnit = 0.5;

/** The unit for a time in hours: the one told, or a smaller one where it is little of that. */
function timeUnit(hours: number, told: string): string {
  const row = unitOf(told);
  if (!row || !(fromBase(hours, row) < leastOfUnit)) return told;
  return hours >= dayH ? 'days' : 'h';
}

/** The unit the answer is given in: that of the first claim, else the base unit. */
function inClaimsUnit({ finding, claims }: Found): { readonly range: Range; readonly unit: string } {
  const fitting = claims.find(c => unitOf(c.unit)?.dimension === finding.dimension);
  const told = fitting?.unit ?? symbolOf(finding.dimension);
  const unit = finding.dimension === 'time' ? timeUnit(finding.answer.value, told) : told;
  const row = unitOf(unit);
  if (!row) return { range: finding.answer, unit };
  const to = (x: number): number => fromBase(x, row);
  const { value, low, high } = finding.answer;
  return { range: { value: to(value), low: to(low), high: to(high) }, unit };
}

/** Who is right, in the first line, with the number. */
function headline(found: Found, setting: RequestContext): string {
  const { finding, claims } = found;
  if (finding.headline) return finding.headline;
  const { range, unit } = inClaimsUnit(found);
  if (finding.judged)
    return headlineBySize(
      claims,
      finding.judged,
      finding.needs ?? `${rounded(range.value)} ${unit}`,
      asker(setting),
      claimed,
    );
  const isExact = range.high - range.low < 0.005 * range.value;
  const spread = span(range.low, range.high, unit);
  const result = `${finding.says} about ${rounded(range.value)} ${unit}${isExact ? '' : ` (${spread})`}`;
  const { ranked, fair, isNeither } = judge(claims, finding.answer);
  const [first] = ranked;
  if (!first) return `${sentence(result)}.`;
  const name = nameOf(first.who, asker(setting));
  if (isNeither)
    return claims.length > 1
      ? `Neither is near: ${result}. ${sentence(name)} ${are(name)} less far off.`
      : `${sentence(ownerOf(first.who, asker(setting)))} ${claimed(first)} is far off: ${result}.`;
  if (fair.length > 1)
    return `${fair.length === 2 ? 'Both' : 'All'} can be right: ${result}. ${sentence(name)} ${are(name)} nearest to the likely value.`;
  if (claims.length === 1 && isExact && fair.length > 0)
    return `${sentence(ownerOf(first.who, asker(setting)))} ${claimed(first)} is right: ${finding.says} that.`;
  if (claims.length === 1)
    return `${sentence(ownerOf(first.who, asker(setting)))} ${claimed(first)} ${fair.length > 0 ? 'is fair' : 'is a bit off'}: ${result}.`;
  return `${sentence(name)} ${are(name)} closest: ${result}.`;
}

/** What would have to be true for each claim, three at most. */
function conditions({ finding, claims }: Found, setting: RequestContext): string | undefined {
  const parts = claims.slice(0, 3).flatMap(claim => {
    const would = finding.wouldMean(claim.value);
    return would ? [`${ownerOf(claim.who, asker(setting))} ${claimed(claim)} ${would}`] : [];
  });
  return parts.length > 0 ? `${sentence(parts.join('; '))}.` : undefined;
}

function closestFigure(found: Found): Record<string, Figure> {
  const { judged } = found.finding;
  const bySize = judged && bestBySize(found.claims, judged)?.best[0]?.who;
  const who = found.finding.closest ?? bySize ?? judge(found.claims, found.finding.answer).ranked[0]?.who;
  return who === undefined ? {} : { closest: { value: who } };
}

/** The other kind of battery, where an argument is about how long one lasts. */
function nextFor(finding: Finding, isLithium: boolean): readonly string[] {
  if (finding.dimension !== 'time') return ['show the working'];
  return [isLithium ? 'what if agm?' : 'what if lithium?', 'show the working'];
}

/** Whether the argument is about lithium, so far as it was told. */
const isAboutLithium = ({ parsed }: RequestContext): boolean =>
  parsed.facts.batteries?.some(({ chemistry }) => chemistry === 'lfp') === true;

/** The claims on the answer's range, where they are of one unit. */
function chartOf(found: Found, setting: RequestContext): Reply['chart'] {
  const { range, unit } = inClaimsUnit(found);
  const row = unitOf(unit);
  const fitting = found.claims.filter(c => unitOf(c.unit)?.dimension === found.finding.dimension);
  if (!row || fitting.length === 0) return undefined;
  const claims = fitting.map(c => ({
    who: sentence(nameOf(c.who, asker(setting))),
    value: fromBase(c.value, row),
  }));
  const title = headline(found, setting).replace(/\.$/, '');
  return () => ({
    kind: 'claims',
    title,
    note: describeRig(setting.parsed.facts).join(', '),
    unit,
    ...range,
    claims,
  });
}

function answerFound(found: Found, setting: RequestContext): Reply {
  const { finding } = found;
  const { range, unit } = inClaimsUnit(found);
  // Lithium in the cold takes nothing in, however long.
  if (!Number.isFinite(range.value))
    return {
      headline: 'Nobody is right: like that it never gets there.',
      lines: [finding.measure],
      verdict: finding.verdict ?? null,
      cautions: finding.cautions,
      next: nextFor(finding, isAboutLithium(setting)),
    };
  const lines = [conditions(found, setting), finding.measure];
  return {
    headline: headline(found, setting),
    lines: lines.filter(line => line !== undefined),
    verdict: finding.verdict ?? null,
    figures: { answer: figure(range, unit), ...closestFigure(found) },
    ...(finding.explored ? reasons(finding.explored) : {}),
    chart: chartOf(found, setting),
    cautions: finding.cautions,
    next: nextFor(finding, isAboutLithium(setting)),
  };
}

/** Words for an argument: who is closest and what each claim would need, or what is missing to say so. */
export function answerSettle(settled: Settled, setting: RequestContext): Reply {
  if (settled.kind === 'found') return answerFound(settled, setting);
  const people = [...new Set(settled.claims.map(c => c.who))];
  const names = people.map(who => {
    const name = isSpeaker(who, asker(setting)) ? 'you' : nameOf(who, asker(setting));
    return name === 'I' ? 'me' : name;
  });
  // Between two or three people, and not between one.
  const between = names.length > 1 && names.length < 4 ? ` between ${list(names)}` : '';
  return {
    headline: `I can't tell yet${between}.`,
    lines: [`To settle that I need ${settled.missing}. Can you tell me?`],
    verdict: null,
    figures: {},
    next: ['sam says 3 days, lou says 5. 100Ah lithium, fridge 1.5A average'],
  };
}
