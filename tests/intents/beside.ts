import { print } from '#answer/text.ts';
import { type Aside, answerAside } from '#intents/asides.ts';
import { type Intent, needsOf } from '#intents/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

/** Letters of a first line that a phone shows whole. */
const headlineLetters = 100;

/** Asides of a table that a phone doesn't show well, or whose name another row has, each with what is wrong. */
export const misfits = (rows: readonly Aside[], most: { readonly lines: number; readonly letters: number }) =>
  rows.flatMap((row, at) => {
    const { headline, lines = [] } = answerAside(row, {});
    const wrong = {
      name: rows.findIndex(({ name }) => name === row.name) !== at,
      headline: headline.length > headlineLetters,
      lines: lines.length > most.lines,
      letters: print({ headline, lines }).length >= most.letters,
    };
    return Object.entries(wrong).flatMap(([what, isWrong]) => (isWrong ? [`${row.name}: ${what}`] : []));
  });

/** The first line to a message that tells these facts; missing facts are told as such. */
export function first(intent: unknown, text: string, facts: Stated = {}): string {
  const asked = intent as Intent;
  const recognised = recognise(text);
  const subject = asked.subjectIn?.(recognised.words, text);
  const setting = settingWith({ subject }, { recognised, facts });
  const { data } = needsOf(asked, subject).safeParse(facts);
  return data
    ? asked.reply(data, setting).headline
    : (asked.guess?.(facts, setting)?.headline ?? 'needs more to work it out');
}
