import type { Group } from './groups.ts';

/** Ways to open or close a message that say nothing: what is learned must not lean on their absence. */
const openings = [
  'hey everyone, ',
  'Morning! ',
  'quick one for the bot: ',
  'G’day. ',
  'Excuse me, ',
  'right then, ',
  'Apologies if this was asked before. ',
  'ok bot, ',
  'Dear group, ',
  'so ',
  'Hiya, newbie here. ',
  'Would somebody be so kind: ',
] as const;
const closings = [
  ' thanks',
  ' Ta muchly.',
  ' cheers all',
  ' Many thanks in advance.',
  ' pls',
  ' 🙂',
] as const;

/** Without its signs, but for those inside numbers and words. */
const unpunctuated = (text: string): string =>
  text
    .replace(/[.,;:!?](?=\s|$)/g, '')
    .replace(/["“”()]/g, '')
    .replace(/ {2,}/g, ' ')
    .trim();

const voices: readonly ((text: string, n: number) => string)[] = [
  (text, n) => openings[n % openings.length]! + text,
  text => unpunctuated(text),
  (text, n) => text + closings[n % closings.length]!,
  text => unpunctuated(text).toLowerCase(),
  (text, n) => openings[(n * 5) % openings.length]! + unpunctuated(text),
  text => text.toUpperCase(),
];

/** Each group told once more in another voice: politely, without punctuation, in capitals. */
export const inMoreVoices = (groups: readonly Group[]): Group[] =>
  groups.map((group, n) => {
    const text = group.wordings[n % group.wordings.length]!;
    const said = voices[n % voices.length]!(text, n);
    return said === text ? group : { ...group, wordings: [...group.wordings, said] };
  });
