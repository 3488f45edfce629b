import type { Mention } from './mention.ts';

const none: Mention['variants'] = [];
/** A mention that is no figure. */
export const make = (
  kind: Mention['kind'],
  key: string,
  from: number,
  to: number,
  more: Partial<Pick<Mention, 'cls' | 'text' | 'raw' | 'value' | 'fine' | 'coarse' | 'supply' | 'unit'>> = {},
): Mention => ({
  kind,
  key,
  cls: more.cls ?? kind,
  text: more.text ?? key,
  from,
  to,
  value: more.value ?? Number.NaN,
  told: Number.NaN,
  variants: none,
  fine: more.fine,
  coarse: more.coarse,
  supply: more.supply,
  unit: more.unit,
  raw: more.raw,
});
