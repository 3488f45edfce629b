import { present } from '#basics/present.ts';
import type { Intent } from '#intents/intent.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { hasDraw } from '#rig/merge.ts';

type Heard = Pick<ParsedMessage, 'recognised' | 'unread' | 'facts' | 'conversion'>;

/** Volts that outlets have, the world over; a controller's limit of 100 V or 150 V is none of them. IEC 60038 and common practice. */
const outletV = [
  { least: 110, most: 127 },
  { least: 208, most: 245 },
] as const;

/** The numbers of a message that stand in no fact. */
function numbersLeft({ recognised, unread }: Heard): { readonly mention: Mention; readonly said: string }[] {
  // Of most messages every number is in a fact: then no mention is looked at.
  if (unread.length === 0) return [];
  const { text, tokens, mentions } = recognised;
  const left = new Map(unread.map(number => [number.text, number.why]));
  return mentions.flatMap(mention => {
    const said = text.slice(present(tokens[mention.from]).start, present(tokens[mention.to - 1]).end);
    return left.has(said) && left.get(said) !== 'said before' ? [{ mention, said }] : [];
  });
}

/** The volts of an outlet told beside a thing for mains ("120 VAC coffee maker, 7.5 A"): they are no fact of a rig. */
export function outletVoltsIn(heard: Heard): number | undefined {
  const told = numbersLeft(heard).flatMap(({ mention: { dimension, value } }) =>
    dimension === 'voltage' && outletV.some(({ least, most }) => value >= least && value <= most)
      ? [value]
      : [],
  );
  return new Set(told).size === 1 ? told[0] : undefined;
}

/** Volts that systems have: told or not, they go without saying. */
const nominalV: ReadonlySet<number> = new Set([6, 12, 24, 36, 48]);
/** Lengths that can be a height above the sea, m: below it is a cable's, beyond it a way to go. */
const heightM = { least: 300, most: 9000 } as const;
const counted: ReadonlySet<string | undefined> = new Set([
  'current',
  'power',
  'charge',
  'energy',
  'temperature',
]);

/** Whether a person might take the amount for counted: a figure of gear, of the air, a height. Not a price, a time, a way or litres. */
function isOfGear({ kind, dimension, value }: Mention): boolean {
  if (kind !== 'amount') return false;
  if (dimension === 'voltage') return !nominalV.has(value);
  if (dimension === 'length') return value >= heightM.least && value <= heightM.most;
  return counted.has(dimension);
}

/** Whether another number is the same, but for how exactly it was told. */
export const isNear =
  (a: number) =>
  (b: number): boolean =>
    Math.abs(a - b) <= 1e-3 * Math.max(1, Math.abs(b));

/** What of the numbers in no fact a question takes from the words by itself, and what is to be named as left out. */
export function leftNumbers(
  { numbersBeside }: Pick<Intent, 'numbersBeside'>,
  heard: ParsedMessage,
): { readonly unread: ParsedMessage['unread']; readonly named: readonly string[] } {
  const taken = [...(numbersBeside?.(heard) ?? []), outletVoltsIn(heard)].filter(one => one !== undefined);
  // Of a fridge whose draw is told its litres say nothing more.
  const typical = heard.facts.loads?.filter(load => !hasDraw(load)) ?? [];
  const litres = typical.flatMap(({ volumeL }) => volumeL ?? []);
  const left = numbersLeft(heard);
  const used = left.filter(({ mention }) =>
    (mention.unit === 'L' ? litres : taken).some(isNear(mention.value)),
  );
  const isUsed = new Set(used.map(({ said }) => said));
  const named = left.filter(({ mention, said }) => isOfGear(mention) && !isUsed.has(said));
  return {
    unread: heard.unread.filter(({ text }) => !isUsed.has(text)),
    named: [...new Set(named.map(({ said }) => said))],
  };
}
