import { exactly, sentence, withinSentence } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { RequestContext } from './intent.ts';

/** "Your 120 Ah AGM" where memory filled it in, else "A 120 Ah AGM"; the chemistry only where it was said. */
export function describeBank(
  bank: Bank,
  setting: Pick<RequestContext, 'recalled' | 'owner'>,
  words: Speech = english,
): string {
  const gaps = {
    ah: words.decimals(bank.capacityAh, 0),
    kind: chemistryName(bank.chemistry, words),
    owner: sentence(setting.owner ?? ''),
  };
  const { say } = words;
  if (!setting.recalled.has('batteries'))
    return bank.isChemistryAssumed
      ? say('a-plain-bank', 'A {ah} Ah battery', gaps)
      : say('a-bank', 'A {ah} Ah {kind}', gaps);
  if (gaps.owner)
    return bank.isChemistryAssumed
      ? say('plain-bank-of', "{owner}'s {ah} Ah battery", gaps)
      : say('bank-of', "{owner}'s {ah} Ah {kind}", gaps);
  return bank.isChemistryAssumed
    ? say('your-plain-bank', 'Your {ah} Ah battery', gaps)
    : say('your-bank', 'Your {ah} Ah {kind}', gaps);
}

/** The same within a sentence: "your 120 Ah AGM", "Jo's 120 Ah AGM". */
export function bankWithin(
  bank: Bank,
  setting: Pick<RequestContext, 'recalled' | 'owner'>,
  words: Speech = english,
): string {
  const named = describeBank(bank, setting, words);
  return setting.owner ? named : withinSentence(named);
}

/** "AGM", "lithium", "lead-acid". */
export const chemistryName = (chemistry: Chemistry, words: Speech = english): string =>
  words.say(`kind-${chemistry}`, chemistry === 'lead-acid' ? 'lead-acid' : chemistryRow(chemistry).name);

/** A wanted time without "about": "3 days", "a day", "9 hours". */
export const wantedTime = (hours: number, words: Speech = english): string =>
  Math.abs(hours - 24) < 0.1 ? words.say('one-day', 'a day') : exactly(hours, words);
