import * as slot from '../propose/slots.ts';
import type { Mention } from '../recognise/mention.ts';
import { attributes, plain } from './fact-table.ts';
import type { State } from './state.ts';

const slips = new Set([
  'sorry',
  'meant',
  'mean',
  'correction',
  'oops',
  'typo',
  'mistake',
  'wrong',
  'misread',
  'actually',
  'wait',
  'scrub',
  'scratch',
  'mistyped',
  'fat',
  'swapped',
  'correct',
  'soz',
  'whoops',
  'nah',
  'naw',
  'lie',
  'eejit',
  'misheard',
  'forgot',
  'amend',
  'fix',
]);
const negations = new Set(['not', 'isnt', 'wasnt', 'instead', 'rather', 'never', 'nae']);

/** Units that names of facts end in, the longer first. */
const units: readonly (readonly [ending: string, unit: string])[] = [
  ['AhPerDay', 'Ah'],
  ['WhPerDay', 'Wh'],
  ['hoursPerDay', 'h'],
  ['minutesPerDay', 'min'],
  ['hoursOnce', 'h'],
  ['Percent', '%'],
  ['Mm2', 'mm²'],
  ['Ah', 'Ah'],
  ['Wh', 'Wh'],
  ['W', 'W'],
  ['A', 'A'],
  ['V', 'V'],
  ['H', 'h'],
  ['M', 'm'],
  ['C', '°C'],
];

/** The unit of a fact, by its name: W of "powerW". */
const unitOf = (fact: string | undefined): string | undefined =>
  fact === undefined ? undefined : units.find(([ending]) => fact.endsWith(ending))?.[1];

/** "6 h, not 16", "sorry, 800 W": the number that is right, and the wrong one where it is told. */
export function correctionOf(
  mentions: readonly Mention[],
  state?: Pick<State, 'slots'>,
): { from?: number; to: number; unit?: string } | undefined {
  const amounts = mentions.filter(m => m.kind === 'amount' || m.kind === 'number');
  if (amounts.length === 0 || amounts.length > 4) return undefined;
  const isSlip = mentions.some(m => m.kind === 'word' && slips.has(m.text));
  let wrong: Mention | undefined;
  for (const m of amounts) {
    const at = mentions.indexOf(m);
    for (let d = 1; d <= 3 && at - d >= 0; d++) {
      const before = mentions[at - d]!;
      if (before.kind === 'amount' || before.kind === 'number') break;
      if (negations.has(before.text)) wrong = m;
    }
  }
  const right = amounts.find(m => m !== wrong && (!wrong || m.unit === wrong.unit || !m.unit || !wrong.unit));
  if (!right || (!wrong && !isSlip)) return undefined;
  if (!wrong && amounts.length > 2) return undefined;
  const other = wrong ?? (amounts.length === 2 ? amounts.find(m => m !== right) : undefined);
  const taken = state?.slots[mentions.indexOf(right)] ?? slot.none;
  const unit = right.unit ?? wrong?.unit ?? unitOf(attributes[taken] ?? plain[taken]?.[1]);
  return {
    ...(other && wrong ? { from: other.told } : {}),
    to: right.told,
    ...(unit ? { unit } : {}),
  };
}
