import type { Answer } from '#answer/answer.ts';
import { languages, speech } from '#answer/speech.ts';
import { intentNamed } from '#intents';
import type { Said } from '#language/said.ts';
import { toAnswer } from './answer.ts';
import type { Memory } from './memory.ts';
import { personKey } from './recall.ts';

/** The language that a person's talk is in so far: the chat's setting, else that of their question before. */
export const talkLanguage = ({ settings, last }: Memory, from: string): string | undefined =>
  settings.language ?? (last?.from === personKey(from) ? last.language : undefined);

/** The language to answer in: the chat's setting, else the one the message is written in, else English. */
export const languageOf = ({ settings }: Memory, said: Said): string =>
  settings.language ?? said.language ?? 'en';

/** "/language de", "auf deutsch", "en français": sets the language of the chat's answers. */
export function setLanguage(
  memory: Memory,
  said: Said,
): { readonly memory: Memory; readonly answer: Answer } | undefined {
  const language = said.speak;
  if (language === undefined || !languages().includes(language)) return undefined;
  const { say } = speech(language);
  const reply = {
    headline: say('speak-now', 'I answer in English here from now on.'),
    next: [say('next-help', 'help')],
  };
  return {
    memory: { ...memory, settings: { ...memory.settings, language } },
    answer: toAnswer(intentNamed('help'), reply, { said, language }),
  };
}
