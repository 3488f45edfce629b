import type { Reply } from '#answer/reply.ts';
import { list } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { decimals } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { usableOf } from './compute.ts';
import { leftAndGone } from './left-and-gone.ts';
import { asksMeaning, isOnlyTerms, mentioned, nearest, termsAsked, termsIn } from './match.ts';
import { lettersOf, neededTerm } from './needed.ts';
import type { PlainQuestion } from './plain/plain-question.ts';
import { plainQuestionIn } from './plain/plain-questions.ts';
import { comparisonOf, type Term, terms } from './terms.ts';

const keyed = (key: string): Term => present(terms.find(t => t.key === key));

/** Terms whose answer takes a number from the battery spoken of. */
const ofCapacity: readonly string[] = ['depth of discharge', 'amp hour', 'agm', 'gel', 'lfp', 'cycle'];

/** "Of your 120 Ah about 60 Ah are for use." */
function live(facts: Facts, setting: RequestContext): string | undefined {
  const known = usableOf(facts);
  if (!known) return undefined;
  const whose = setting.recalled.has('batteries') ? 'your' : 'the';
  return `Of ${whose} ${decimals(known.capacityAh, 0)} Ah about ${decimals(known.usable.value, 0)} Ah are for use.`;
}

/** Without its sign: "amp" of "amp (A)". */
const plainName = ({ name }: Term): string => name.split(' (')[0] ?? name;

/** As its explanation names it: "an amp hour", "the BMS"; by itself where it begins otherwise. */
function ask(term: Term): string {
  const { name, key, says } = term;
  const plain = plainName(term);
  const called = /^[A-Z]+$/.test(name) ? name : key;
  const [first = ''] = says;
  const [article = ''] = first.split(' ');
  const isNamed = first
    .slice(article.length + 1)
    .toLowerCase()
    .startsWith(`${plain.toLowerCase()} `);
  return `what is ${isNamed && /^(?:An?|The)$/.test(article) ? `${article.toLowerCase()} ${plain}` : called}?`;
}

/** Terms to go on with: those the explanation itself uses. */
function onwards(term: Term): string[] {
  const others = mentioned(term.says.join(' ')).filter(t => t !== term && !['amp', 'volt'].includes(t.key));
  return [...others.slice(0, 2).map(ask), 'teach me'].slice(0, 3);
}

/** "Depth of discharge (DoD) is …": the name with its sign, where the sentence says the plain name. */
function named({ name }: Term, says: string): string {
  const [plain = name] = name.split(' (');
  const at = says.toLowerCase().indexOf(plain.toLowerCase());
  const isSigned = plain === name || at < 0 || says.startsWith(' (', at + plain.length);
  return isSigned
    ? says
    : `${says.slice(0, at)}${says.slice(at, at + plain.length)}${name.slice(plain.length)}${says.slice(at + plain.length)}`;
}

/** The first sentence, and the rest of them. */
function parted(says: string): readonly [first: string, rest: readonly string[]] {
  const end = says.indexOf('. ');
  return end < 0 ? [says, []] : [says.slice(0, end + 1), [says.slice(end + 2)]];
}

function explain(term: Term, facts: Facts, setting: RequestContext, needed?: string): Reply {
  const more = ofCapacity.includes(term.key) ? live(facts, setting) : undefined;
  const [first = '', ...rest] = term.says;
  const letters = lettersOf(term, setting.parsed);
  const lines = [...rest, `For example: ${term.example}`, ...(more ? [more] : [])];
  const before = [needed, letters].filter(line => line !== undefined);
  return {
    headline: named(term, first),
    lines: [...before, ...(needed ? lines.slice(0, 1) : lines)],
    verdict: null,
    cautions: term.caution ? [term.caution] : [],
    next: onwards(term),
  };
}

function compare(a: Term, b: Term): Reply {
  const known = comparisonOf(a, b);
  const [headline, rest] = known
    ? parted(known.says)
    : [named(a, present(a.says[0])), [named(b, present(b.says[0]))]];
  const lines = known ? [...rest, `For example (${plainName(a)}): ${a.example}`] : rest;
  const cautions = [a.caution, b.caution].filter(c => c !== undefined);
  return { headline, lines, verdict: null, cautions, next: [ask(a), ask(b), 'teach me'] };
}

/** So many words are explained in one answer, a line each. */
const mostTerms = 5;

/** Several words asked after at once: each by its first sentence. */
function several(all: readonly Term[]): Reply {
  const [headline = '', ...lines] = all.slice(0, mostTerms).map(term => named(term, present(term.says[0])));
  const cautions = [...new Set(all.map(({ caution }) => caution).filter(c => c !== undefined))];
  return { headline, lines, verdict: null, cautions, next: all.slice(0, 3).map(ask) };
}

/** Why the whole label can't be used. */
function whyNotAll(facts: Facts, setting: RequestContext): Reply {
  const known = usableOf(facts);
  const lines = [
    'The label counts down to quite empty. Each time a lead-acid battery goes below half it loses some of its life, so people stop at 50 % depth of discharge; lithium stands 80 to 100 %.',
    ...(known ? [present(live(facts, setting))] : []),
  ];
  const headline = known?.isLithium
    ? 'Lithium lets you use 80 to 100 % of the label; the last bit is left to spare the cells.'
    : 'Because a lead-acid battery wears out fast below half: about 50 % of the label is for use.';
  return {
    headline,
    lines,
    verdict: null,
    cautions: [],
    next: [ask(keyed('depth of discharge')), 'agm or lithium?'],
  };
}

function unknown(phrase: string): Reply {
  const near = nearest(phrase).map(t => t.name);
  const offer =
    near.length > 0 ? `Do you mean ${list(near, 'or')}?` : 'Which word of 12 V power do you mean?';
  const what = phrase === '' ? "I'm not sure which word you mean." : `I don't know “${phrase.slice(0, 40)}”.`;
  return {
    headline: `${what} ${offer}`,
    verdict: null,
    next: (near.length > 0 ? nearest(phrase) : [keyed('amp hour'), keyed('depth of discharge')]).map(ask),
  };
}

const plainly = ({ says, lines, caution, next }: PlainQuestion): Reply => ({
  headline: says,
  lines,
  verdict: null,
  cautions: caution ? [caution] : [],
  next,
});

/** How two words are held apart: the one that was singled out is then half of what is asked. */
const heldApart = ['difference|diff|vs|versus|same|or'] as const;

/** Words for a plain question, else for a term asked after; two terms are compared; an unknown one is asked back. */
export function answerTerm(facts: Facts, setting: RequestContext): Reply {
  const { term, cues } = setting.parsed;
  const added = leftAndGone(setting.parsed);
  if (added) return added;
  const both = neededTerm(setting.parsed);
  if (both) return explain(both[0], facts, setting, both[1]);
  const asked = plainQuestionIn(setting.parsed, setting.about);
  if (asked) return plainly(asked);
  const words = setting.parsed.recognised.words.join(' ');
  const all = termsAsked(setting.parsed);
  if (all.length > 2) return several(all);
  if (all.length === 2 && isSpotted(setting.parsed.recognised.words, asksMeaning))
    return compare(...(all as [Term, Term]));
  const [one, other, ...more] = isSpotted(setting.parsed.recognised.words, heldApart) ? mentioned(words) : [];
  if (one && other && more.length === 0 && comparisonOf(one, other)) return compare(one, other);
  const found = term === undefined ? [] : termsIn(term);
  const [first, second] = found;
  const isDepth = first?.key === 'depth of discharge' || (!first && facts.batteries !== undefined);
  if (cues.has('ask-why') && isDepth) return whyNotAll(facts, setting);
  if (!first) return unknown(term ?? '');
  const isPair =
    second && (comparisonOf(first, second) !== undefined || (term !== undefined && isOnlyTerms(term)));
  // "What is an inverter, and do I need one for phones": the first is what is asked after.
  return isPair ? compare(first, second) : explain(first, facts, setting);
}
