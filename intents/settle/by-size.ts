import { list, sentence } from '#answer/say.ts';
import { nameOf, ownerOf } from './claims.ts';
import type { EnoughOrNot, Heard } from './dispute.ts';

// Who is right about a size that must be large enough: too large does no harm, too small does.

/** Whose claim is right, else the least that is more than is needed, else the largest that isn't enough. */
export function bestBySize(
  claims: readonly Heard[],
  judged: (value: number) => EnoughOrNot,
): { readonly best: readonly Heard[]; readonly is: EnoughOrNot } | undefined {
  const of = (is: EnoughOrNot): Heard[] =>
    claims.filter(({ value }) => judged(value) === is).sort((a, b) => a.value - b.value);
  const [right, over, under] = [of('right'), of('over'), of('under')];
  if (right.length > 0) return { best: right, is: 'right' };
  if (over.length > 0) return { best: over.slice(0, 1), is: 'over' };
  return under.length > 0 ? { best: under.slice(-1), is: 'under' } : undefined;
}

/**
 * The first line of such an argument.
 * @param need what it takes: "70 mm²"
 * @param from who asks, for "you"
 * @param said a claim as it was said: "35 mm²"
 */
export function headlineBySize(
  claims: readonly Heard[],
  judged: (value: number) => EnoughOrNot,
  need: string,
  from: string,
  said: (claim: Heard) => string,
): string {
  const found = bestBySize(claims, judged);
  const [first] = found?.best ?? [];
  if (!found || !first) return `It takes ${need}.`;
  const names = [...new Set(found.best.map(({ who }) => nameOf(who, from)))];
  const owned = `${sentence(ownerOf(first.who, from))} ${said(first)}`;
  const are = names.length > 1 || ['you', 'they'].includes(names[0] ?? '') ? 'are' : 'is';
  switch (found.is) {
    case 'right':
      return `${sentence(list(names))} ${names[0] === 'I' ? 'am' : are} right: it takes ${need}.`;
    case 'over':
      return `${owned} does it, and is more than it needs: ${need} is enough.`;
    case 'under':
      return claims.length > 1
        ? `${claims.length === 2 ? 'Neither' : 'None'} is enough: it takes ${need}. ${owned} is nearest.`
        : `${owned} is too small: it takes ${need}.`;
  }
}
