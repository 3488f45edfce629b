import { read } from '#language/read.ts';
import type { Context, Said } from '#language/said.ts';
import type { Facts } from '#rig/rig.ts';

/** A Friday morning in May. */
export const context: Context = {
  at: new Date('2026-05-15T09:00:00Z'),
  from: 'kim',
  people: ['kim', 'rob', 'tess'],
};

export const said = (text: string, more: Partial<Context> = {}): Said => read(text, { ...context, ...more });

/** What a message states, without what nobody had to say: a count of one and the DC side. */
export function facts(text: string, more: Partial<Context> = {}): unknown {
  return plain(said(text, more).facts);
}

export type Row = readonly [text: string, want: Facts | Record<string, unknown>];

const plain = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(plain);
  if (value === null || typeof value !== 'object') return value;
  const kept = Object.entries(value).filter(
    ([key, v]) => v !== undefined && !(key === 'count' && v === 1) && !(key === 'supply' && v === 'dc'),
  );
  return Object.fromEntries(kept.map(([key, v]) => [key, plain(v)]));
};
