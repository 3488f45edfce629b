import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';
import { driveWords } from '../../words/en/day-plans.ts';
import type { DayKey } from './symbol.ts';

const topicReach = 6;

export const isHours = (m: Mention | undefined): m is Mention & { readonly kind: 'amount' } =>
  m?.kind === 'amount' && m.dimension === 'time' && (m.unit === 'h' || m.unit === 'min');

export interface Scope {
  readonly mentions: readonly Mention[];
  /** How strongly a mention parts what is around it: 0 not at all. */
  readonly stops: readonly number[];
  /** Words of a topic that hours have taken already. */
  readonly taken: Set<number>;
}

const isGenerator = (m: Mention): boolean =>
  (m.kind === 'charger' && m.key === 'generator') || m.text === 'generator';
/** A thing by its name, but driving in a plan of days. */
const isDrive = (m: Mention): boolean => m.text === 'drive';
export const isLoad = (m: Mention): boolean =>
  (m.kind === 'thing' && m.cls === 'thing' && !isDrive(m)) || m.kind === 'inverter' || m.kind === 'mains';

/** What the words around a mention say its hours are of: a key, "load", or nothing. */
export function topicOf(
  { mentions, stops, taken }: Scope,
  at: number,
  reach = topicReach,
): DayKey | 'load' | undefined {
  let best: { readonly key: DayKey | 'load'; readonly cost: number; readonly i: number } | undefined;
  for (const step of [-1, 1])
    for (let d = 1; d <= reach; d++) {
      const i = at + step * d;
      const m = mentions[i];
      if (!m || stops[step < 0 ? i : i]! > 0 || (step > 0 && m.isNewLine) || isHours(m)) break;
      const key = isGenerator(m)
        ? 'generatorH'
        : m.kind === 'mains'
          ? 'mainsH'
          : m.kind === 'without'
            ? undefined
            : (m.kind === 'word' || m.kind === 'noun' || m.kind === 'alternator' || m.kind === 'thing') &&
                driveWords.has(m.text)
              ? 'drivingH'
              : m.kind === 'noun' && driveWords.has(m.text.split(' ').at(-1)!)
                ? 'drivingH'
                : isLoad(m)
                  ? 'load'
                  : undefined;
      const cost = d + (taken.has(i) ? 5 : 0) + (step > 0 ? 0.5 : 0);
      if (key && (!best || cost < best.cost)) best = { key, cost, i };
      if (step < 0 && m.isNewLine) break;
    }
  if (best && best.key !== 'load') taken.add(best.i);
  return best?.key;
}

/** What the sentence before a mention speaks of, past commas: "we run the generator once, 3 hours". */
export function topicBefore({ mentions, stops }: Scope, at: number): DayKey | undefined {
  for (
    let i = at - 1;
    i >= Math.max(0, at - 12) && stops[i]! < 3 && !present(mentions[i + 1]).isNewLine;
    i--
  ) {
    const m = present(mentions[i]);
    if (isHours(m)) return undefined;
    if (isGenerator(m)) return 'generatorH';
    if ((m.kind === 'word' && driveWords.has(m.text)) || isDrive(m)) return 'drivingH';
  }
  return undefined;
}
