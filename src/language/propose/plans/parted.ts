import type { Mention } from '../../recognise/mention.ts';

type Parts = readonly [Mention, Mention];

const sunHours = /^(?:h|hrs?|hours?) sun$/;
const nothing = { value: Number.NaN, told: Number.NaN, variants: [] } as const;

/** "4 h sun": four hours and a sunny day, or Sunday. */
const sunOf = (m: Mention): Parts | undefined =>
  m.dimension === 'sun' && sunHours.test(m.spelled ?? '')
    ? [
        { ...m, to: m.to - 1, dimension: 'time', spelled: 'h' },
        { ...nothing, kind: 'sky', key: 'sunny', cls: 'sky:sunny', text: 'sun', from: m.to - 1, to: m.to },
      ]
    : undefined;

const dayWord = (text: string, m: Mention): Mention => ({
  ...nothing,
  kind: 'word',
  key: text,
  cls: text,
  text,
  from: m.to - 1,
  to: m.to,
});

/** "Day two zero day three": zero is no span of days. */
const zeroOf = (m: Mention): Parts | undefined =>
  m.kind === 'amount' && m.told === 0 && (m.spelled === 'day' || m.spelled === 'days')
    ? [
        { ...m, kind: 'number', to: m.to - 1, dimension: undefined, unit: undefined, spelled: undefined },
        dayWord(m.spelled, m),
      ]
    : undefined;

/** "Sat none, sun none": no driving on Sunday. */
const noneOf = (m: Mention): Parts | undefined =>
  m.kind === 'without' && m.text === 'sun none'
    ? [
        { ...nothing, kind: 'sky', key: 'sunny', cls: 'sky:sunny', text: 'sun', from: m.from, to: m.to - 1 },
        dayWord('none', m),
      ]
    : undefined;

/** "Drive 2 h / day 2 parked": the stroke parts days and is no rate. */
function strokeOf(m: Mention, before: Mention | undefined, after: Mention | undefined): Parts | undefined {
  if (
    m.kind !== 'rate' ||
    (m.text !== '/ day' && m.text !== '/ d') ||
    after?.kind !== 'number' ||
    !Number.isInteger(after.told)
  )
    return undefined;
  if (before?.kind === 'amount' && before.dimension !== 'time') return undefined;
  return [
    { ...nothing, kind: 'sign', key: '/', cls: '/', text: '/', from: m.from, to: m.to - 1 },
    dayWord(m.text.slice(2), m),
  ];
}

/**
 * The mentions as plans need them: some that recognition joins are two here. `at` tells for each which one of the
 * message it comes from.
 */
export function parted(mentions: readonly Mention[]): {
  readonly mentions: readonly Mention[];
  readonly at: readonly number[];
} {
  const out: Mention[] = [];
  const at: number[] = [];
  mentions.forEach((m, i) => {
    for (const part of sunOf(m) ??
      noneOf(m) ??
      zeroOf(m) ??
      strokeOf(m, mentions[i - 1], mentions[i + 1]) ?? [m]) {
      out.push(part);
      at.push(i);
    }
  });
  return { mentions: out, at };
}
