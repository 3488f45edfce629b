import type { ParsedMessage } from '#language/reading.ts';
import { type Recognised, recognise } from '#language/recognise/recognise.ts';
import { isSameName } from '#rig/merge.ts';
import type { Memory } from '../memory.ts';

type Choice = NonNullable<Memory['choice']>['options'][number];

/** More words than this pick nothing. */
const mostWords = 6;

/** Kinds of mention that say which gear is meant; a battery is as well told by what it is of. */
const sorts: Readonly<Record<string, string>> = {
  battery: 'battery',
  chemistry: 'battery',
  solar: 'solar',
  charger: 'charger',
  inverter: 'inverter',
  cable: 'cable',
};

const sortsIn = ({ mentions }: Recognised): Set<string> =>
  new Set(mentions.flatMap(({ kind, key }) => (kind === 'thing' ? key : (sorts[kind] ?? []))));

/** Which of two readings somebody picks: by the words of its button, or by the gear that it alone speaks of ("the panel I mean"). */
export function pickedIn(
  { choice }: Memory,
  text: string,
  { words, recognised }: Pick<ParsedMessage, 'words' | 'recognised'>,
): Choice | undefined {
  const options = choice?.options ?? [];
  const said = options.find(option => isSameName(option.say, text.trim()));
  const isFigure = recognised.mentions.some(({ kind }) => kind === 'amount' || kind === 'number');
  if (said || isFigure || words > mostWords || text.includes('?')) return said;
  const named = sortsIn(recognised);
  const meant = options.filter(option => [...sortsIn(recognise(option.say))].some(sort => named.has(sort)));
  return meant.length === 1 ? meant[0] : undefined;
}
