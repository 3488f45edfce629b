import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { alike, exactly, quarters, rounded, sentence } from '#answer/say.ts';
import { isSpotted } from '#intents/spotting.ts';
import { plain } from '#quantity/round.ts';
import type { Interpreted } from '../interpret.ts';
import { personKey } from '../kept/recall.ts';
import { rigOf } from '../kept/remembered.ts';
import type { Frame, Memory } from '../memory.ts';
import { isPair } from '../turns/lean.ts';
import { asksWhatItChanges, type SideAsked, sideAskedIn } from '../turns/side-asked.ts';

/** Figures that an answer is about, where they aren't its first. */
const aboutIts: Partial<Record<string, string>> = { 'inverter-check': 'batteryCurrent' };
/** Figures that are of a day. */
const daily: ReadonlySet<string> = new Set(['dailyYield', 'dailyUse', 'dailyYieldEnergy']);

/** One figure of two answers. */
interface Both {
  readonly name: string;
  readonly unit: string;
  readonly from: number;
  readonly to: number;
}

/** A figure that is a number, with its unit. */
const numberOf = (figure: Figure | undefined): { value: number; unit: string } | undefined =>
  figure && typeof figure.value === 'number' && 'unit' in figure && Number.isFinite(figure.value)
    ? { value: figure.value, unit: figure.unit }
    : undefined;

/** The figure that two answers to one question are about: of a cable told, what it loses. */
function bothOf(before: Reply, after: Reply, { intent, facts: { cable } }: Frame): Both | undefined {
  const isCableTold = (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm) !== undefined;
  const [first = ''] = Object.keys(after.figures ?? {});
  const name = intent === 'cable-size' && isCableTold ? 'voltageDropPercent' : (aboutIts[intent] ?? first);
  const [from, to] = [numberOf(before.figures?.[name]), numberOf(after.figures?.[name])];
  return from && to && from.unit === to.unit
    ? { name, unit: to.unit, from: from.value, to: to.value }
    : undefined;
}

/** Both as people say them, and what lies between. */
function said({ name, unit, from, to }: Both): readonly [from: string, to: string, apart: string] {
  const apart = Math.abs(to - from);
  if (unit === 'h') {
    const [a, b] = alike(from, to);
    return [a, b, a.endsWith('days') && b.endsWith('days') ? days(apart) : exactly(apart)];
  }
  const per = daily.has(name) ? ' a day' : '';
  const [a, b] = [rounded(from), rounded(to)];
  // What lies between the figures as they were said.
  const between = Math.abs(asNumber(b) - asNumber(a)).toPrecision(2);
  return [`${a} ${unit}`, `${b} ${unit}${per}`, `${plain(Number(between))} ${unit}`];
}

const asNumber = (text: string): number => Number(text.replaceAll(',', ''));

const days = (hours: number): string => `${quarters(hours / 24)} ${hours <= 30 ? 'day' : 'days'}`;

/** As near to one another as this, two answers are the same to a camper. */
const alikeShare = 0.08;

const isSame = ({ from, to }: Both): boolean =>
  Math.abs(to - from) <= alikeShare * Math.max(Math.abs(from), Math.abs(to));

/** Units of which shares say nothing: of hours the difference is enough, and a share of a share is no help. */
const ofShares: ReadonlySet<string> = new Set(['h', '%', 'mm²']);
/** More and less, as it is said of a unit. */
const moreOf: Readonly<Record<string, readonly [more: string, less: string]>> = {
  h: ['longer', 'shorter'],
  'mm²': ['thicker', 'thinner'],
};

/** "Twice as much", "40 % less": what it is in parts. */
function part({ from, to, unit }: Both): string {
  if (from <= 0 || to <= 0) return '';
  const times = to / from;
  if (times >= 1.8) return `, ${quarters(times)} times as ${unit === 'h' ? 'long' : 'much'}`;
  return ofShares.has(unit) ? '' : `, or ${plain(Math.round(100 * Math.abs(times - 1)))} %`;
}

const asksYesNo: ReadonlySet<string> = new Set('does is will would did do has'.split(' '));

/** What a change has changed. */
function changedLine(both: Both, { heard }: Interpreted): string {
  const [from, to, apart] = said(both);
  const [first] = heard.recognised.words.filter(word => !['so', 'ok', 'and', 'but', 'well'].includes(word));
  const isYesNo = asksYesNo.has(first ?? '');
  if (isSame(both)) return `${isYesNo ? 'Not much' : 'Hardly anything'}: from ${from} to ${to}.`;
  const [more, less] = moreOf[both.unit] ?? ['more', 'less'];
  const line = `from ${from} to ${to}: ${apart} ${both.to > both.from ? more : less}${part(both)}.`;
  return isYesNo ? `Yes, ${line}` : sentence(line);
}

/** Whose the answer is, as its asker is told. */
const whose = (frame: Frame, isOwn: boolean): string => (isOwn ? 'yours' : `${sentence(rigOf(frame))}’s`);

/** How two people's answers differ. */
function rivalsLine(both: Both, [own, other]: readonly [string, string]): string {
  const [a, b, apart] = said(both);
  if (isSame(both)) return `Much the same: ${own} ${a}, ${other} ${b}.`;
  const isOwnMore = both.from > both.to;
  const [first, second] = isOwnMore ? [own, other] : [other, own];
  const [most, least] = isOwnMore ? [a, b] : [b, a];
  const more = both.unit === 'h' ? `lasts ${apart} longer` : `is ${apart} more`;
  return `${sentence(first)} ${more}: ${most}, ${second} ${least}.`;
}

/** An answer under a first line that tells another side of it. */
const under = (reply: Reply, line: string): Reply => ({
  ...reply,
  headline: line,
  lines: [reply.headline, ...(reply.lines ?? []).filter(other => other !== line)],
});

/** Questions that somebody's answer stood for, the latest of each person; not those that wait for something. */
function latestOf({ frames }: Memory, intent: string): Frame[] {
  const of = frames.filter(frame => frame.asked === undefined && isPair(frame.intent, intent));
  return [...new Map(of.map(frame => [rigOf(frame), frame])).values()];
}

/** How the answer of the asker differs from somebody else's: whom they name, else the last one. */
function rivals(memory: Memory, { heard, intent, answerTo }: Interpreted, from: string): string | undefined {
  const me = personKey(from);
  const all = latestOf(memory, intent.name);
  const named = heard.owners.map(personKey);
  const isNamed = (frame: Frame): boolean => named.includes(rigOf(frame));
  const others = all.filter(frame => rigOf(frame) !== me);
  const other = others.findLast(isNamed) ?? others.at(-1);
  const own = all.find(frame => rigOf(frame) === me) ?? others.findLast(frame => frame !== other);
  if (!own || !other || own.intent !== other.intent) return undefined;
  const [mine, theirs] = [answerTo(own), answerTo(other)];
  const both = mine && theirs && bothOf(mine, theirs, own);
  const names = [own, other].map(frame => whose(frame, rigOf(frame) === me));
  return both && rivalsLine(both, names as [string, string]);
}

const ofDrop: ReadonlySet<string> = new Set(['lose', 'loses', 'lost', 'loss', 'drop']);

/** What has changed since the question before, of the same person and kind. */
function changed(memory: Memory, read: Interpreted): string | undefined {
  const { frame, intent, answerTo, heard } = read;
  if (!frame) return undefined;
  // "How much do I lose?" of a cable is its drop.
  if (intent.name === 'cable-size' && heard.recognised.words.some(word => ofDrop.has(word))) return undefined;
  const own = memory.frames.filter(
    one =>
      one === frame || (one.from === frame.from && one.asked === undefined && one.intent === intent.name),
  );
  const before = own
    .slice(0, own.indexOf(frame))
    .findLast(one => JSON.stringify(one.facts) !== JSON.stringify(frame.facts));
  const [was, is] = [before && answerTo(before), answerTo(frame)];
  const both = was && is && bothOf(was, is, frame);
  return both && changedLine(both, read);
}

/** What a change would make that the line tells itself, of the question that it turns. */
function turnedBy(reply: Reply, read: Interpreted): string | undefined {
  const was = read.replay?.();
  const both = was && read.frame && bothOf(was, reply, read.frame);
  return both && changedLine(both, read);
}

/** The answer under what a short line asks of it: another side of the same; undefined where it asks none. */
export function anotherSide(reply: Reply, read: Interpreted, memory: Memory): Reply | undefined {
  const { heard, intent, replay } = read;
  const side = sideAskedIn(heard);
  // Words that ask what would do ask other things by themselves ("do I need a fuse?"): here it is what was just judged.
  const whole = side === 'instead' ? replay?.() : reply;
  if (!whole || Object.keys(whole.figures ?? {}).length === 0 || intent.isArgument) return undefined;
  if (side === undefined) {
    const line = asksWhatItChanges(heard) ? turnedBy(whole, read) : undefined;
    return line === undefined ? undefined : under(whole, line);
  }
  // Whom somebody names is compared whatever the line leans on; all else is of the question that it asks after.
  const line = replay || side === 'rivals' ? lineOf(side, whole, read, memory) : undefined;
  return line === undefined ? undefined : under(whole, line);
}

/** Words that ask how far apart two answers are, not only which is more. */
const asksApart: readonly string[] = [
  'how_much|how_many|how_far|by_how_much|difference|gap|compare|compares',
];

/** The first line that answers a side. */
function lineOf(
  side: SideAsked,
  { instead, headline }: Reply,
  read: Interpreted,
  memory: Memory,
): string | undefined {
  const ofChange = () => changed(memory, read);
  const ofRivals = () => rivals(memory, read, read.setting.from);
  switch (side) {
    case 'instead':
      return instead;
    case 'change':
      return ofChange();
    case 'rivals':
      // "Whose lasts longer?" may have been answered by both their rigs already.
      return isSpotted(read.heard.recognised.words, asksApart) || read.replay?.()?.headline === headline
        ? ofRivals()
        : undefined;
    case 'apart':
      return read.frame?.cues?.includes('ask-whose')
        ? (ofRivals() ?? ofChange())
        : (ofChange() ?? ofRivals());
    case 'goes':
    case 'angle':
      return undefined;
  }
}
