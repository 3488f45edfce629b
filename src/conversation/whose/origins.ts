import type { Stated } from '#rig/rig.ts';
import type { Frame } from '../memory.ts';

/** What a question took from somebody else. */
export interface Lent {
  readonly who: string;
  readonly facts: Stated;
  /** It is of a rig that was told, and of no question. */
  readonly isRig?: boolean;
}

/** Facts with whose they are; nobody's in particular where that is the writer or the whole chat. */
export interface FactSource {
  readonly who?: string | undefined;
  readonly facts: Stated;
  readonly isRig?: boolean;
}

/** Where they camp is the whole group's, as a location shared is. */
const ofAll: ReadonlySet<string> = new Set(['latitudeDeg', 'longitudeDeg']);

/** The figures of a fact, each with what it is of; of what is told in words, where and until when. */
function figuresOf(key: string, value: unknown, path = key): string[] {
  if (ofAll.has(key)) return [];
  if (typeof value === 'number') return path.endsWith('.count') ? [] : [`${path} ${value}`];
  if (typeof value === 'string') return key === 'place' || key === 'until' ? [`${path} ${value}`] : [];
  if (Array.isArray(value)) return value.flatMap(one => figuresOf(key, one, path));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, one]) => figuresOf(key, one, `${path}.${name}`));
}

const figuresIn = (facts: Stated): string[] =>
  Object.entries(facts).flatMap(([key, value]) => figuresOf(key, value));

/** The part of some facts that holds one of the figures: whole things, as they were told. */
function partWith(facts: Stated, figures: ReadonlySet<string>): Stated {
  const isIn = (key: string, value: unknown): boolean =>
    figuresOf(key, value).some(figure => figures.has(figure));
  const parts = Object.entries(facts).flatMap(([key, value]) => {
    const rows = Array.isArray(value) ? value.filter(row => isIn(key, row)) : value;
    const isThere = Array.isArray(rows) ? rows.length > 0 : isIn(key, value);
    return isThere ? [[key, rows]] : [];
  });
  return Object.fromEntries(parts) as Stated;
}

/** The sources that the facts of a question are: what it took from others, and the rest, which is its asker's. */
export function sourcesOf(frame: Frame, from: string): FactSource[] {
  const lent = (frame.lent ?? []).map(({ who, facts }) => ({
    who: who === from ? undefined : who,
    facts: facts as Stated,
  }));
  return [...lent, { who: frame.from === from ? undefined : frame.from, facts: frame.facts }];
}

/** What of a question's facts its asker took from others. */
export const lentInFrame = (frame: Frame, from: string): Lent[] =>
  sourcesOf(frame, from).flatMap(({ who, facts }) =>
    who === undefined || who === frame.from ? [] : [{ who, facts }],
  );

/**
 * What of the facts that a question goes by is somebody else's: every figure that the writer has not told now and that
 * stands in no source of their own. The first source that holds a figure is whose it is. Whatever way a figure came in,
 * it passes here, so that no answer holds another's number without a word of whose it is.
 * @param told what the writer tells in the message
 * @param sources what memory lends, the nearest first
 * @param own the writer, and who shares their rig: nothing of theirs is lent
 */
export function lentIn(
  facts: Stated,
  told: Stated,
  sources: readonly FactSource[],
  own: readonly string[] = [],
): Lent[] {
  const owners = new Map<string, string | undefined>();
  for (const { who, facts: held } of [{ facts: told }, ...sources] as readonly FactSource[])
    for (const figure of figuresIn(held)) {
      const isOwn = who !== undefined && own.includes(who);
      if (!owners.has(figure)) owners.set(figure, isOwn ? undefined : who);
    }
  const figures = figuresIn(facts);
  const others = new Set(figures.flatMap(figure => owners.get(figure) ?? []));
  return [...others].flatMap(who => {
    const theirs = new Set(figures.filter(figure => owners.get(figure) === who));
    const held = sources
      .filter(source => source.who === who)
      .map(source => ({ ...source, facts: partWith(source.facts, theirs) }))
      .filter(source => Object.keys(source.facts).length > 0);
    const lent = Object.assign({}, ...held.map(source => source.facts).reverse()) as Stated;
    const isRig = held.every(source => source.isRig);
    return held.length > 0 ? [{ who, facts: lent, ...(isRig && { isRig }) }] : [];
  });
}
