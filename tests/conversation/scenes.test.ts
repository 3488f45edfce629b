import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { scenes } from './scenes.ts';

type Figure = readonly [path: string, value: number];

const notCounted: ReadonlySet<string> = new Set(['count', 'latitudeDeg', 'longitudeDeg', 'month']);

/** The numbers of some facts, each with what it is of. */
function figuresIn(value: unknown, path = ''): Figure[] {
  if (typeof value === 'number') return [[path, value]];
  if (Array.isArray(value)) return value.flatMap(one => figuresIn(one, path));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    notCounted.has(key) ? [] : figuresIn(one, path === '' ? key : `${path}.${key}`),
  );
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-6 * Math.max(1, Math.abs(b));
const isNamed = (who: string, text: string): boolean =>
  new RegExp(`(?:^|[^a-z])${who}(?:$|[^a-z])`).test(text.toLowerCase());

/** Numbers that an answer of a scene goes by, that others told, its asker didn't, and it says no name of. */
function borrowedUnsaid(lines: readonly string[]): string[] {
  let memory: Memory = emptyMemory();
  const told = new Map<string, number[]>();
  return lines.flatMap((line, i) => {
    const [from = '', ...rest] = line.split(': ');
    const text = rest.join(': ');
    const at = new Date(Date.UTC(2026, 0, 15, 9, 2 * i));
    const { memory: after, answer } = converse(memory, { chat: 'camp', from, text, at, kind: 'group' });
    memory = after;
    const me = from.toLowerCase();
    const written = (text.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
    const own = [...(told.get(me) ?? []), ...written, ...figuresIn(answer.understood).map(([, n]) => n)];
    told.set(me, own);
    // What stands in a rig is its people's, whoever told it.
    for (const [kept, rig] of Object.entries(memory.rigs))
      for (const who of [
        kept,
        ...Object.keys(memory.shared ?? {}).filter(one => memory.shared?.[one] === kept),
      ])
        told.set(who, [...(told.get(who) ?? []), ...figuresIn(rig).map(([, n]) => n)]);
    const mine = told.get(me) ?? [];
    const frame = memory.frames.at(-1);
    if (answer.text === '' || Object.keys(answer.figures).length === 0 || frame?.at !== at.getTime())
      return [];
    return figuresIn(frame.facts).flatMap(([path, n]) => {
      if (mine.some(one => isNear(one, n))) return [];
      const whose = [...told].filter(([who, all]) => who !== me && all.some(one => isNear(one, n)));
      const isSaid = whose.some(([who]) => isNamed(who, answer.text));
      return whose.length === 0 || isSaid ? [] : [`${line}: ${path} ${n} of ${whose.map(([who]) => who)}`];
    });
  });
}

describe('no answer holds a number of somebody else’s without a word of whose it is', () => {
  test.each(Object.entries(scenes))('%s', (_name, lines) => {
    expect(borrowedUnsaid(lines)).toEqual([]);
  });
});
