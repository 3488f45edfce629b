import type { Mention } from '../../recognise/mention.ts';

/**
 * In plans "4 h sun" is four hours and a sunny day, or Sunday, not hours of sun, and in "day two zero day three" zero is no span: parts such amounts in two. `at` tells
 * for each mention which one of the message it comes from.
 */
export function parted(mentions: readonly Mention[]): { readonly mentions: readonly Mention[]; readonly at: readonly number[] } {
  const out: Mention[] = [];
  const at: number[] = [];
  mentions.forEach((m, i) => {
    at.push(i);
    const isNoDay = m.kind === 'amount' && m.told === 0 && (m.spelled === 'day' || m.spelled === 'days');
    if (isNoDay) {
      out.push({ ...m, kind: 'number', to: m.to - 1, dimension: undefined, unit: undefined, spelled: undefined }, { kind: 'word', key: m.spelled!, cls: m.spelled!, text: m.spelled!, from: m.to - 1, to: m.to, value: Number.NaN, told: Number.NaN, variants: [] });
      at.push(i);
      return;
    }
    if (m.dimension !== 'sun' || !/^(?:h|hrs?|hours?) sun$/.test(m.spelled ?? '')) {
      out.push(m);
      return;
    }
    out.push({ ...m, to: m.to - 1, dimension: 'time', spelled: 'h' }, { kind: 'sky', key: 'sunny', cls: 'sky:sunny', text: 'sun', from: m.to - 1, to: m.to, value: Number.NaN, told: Number.NaN, variants: [] });
    at.push(i);
  });
  return { mentions: out, at };
}
