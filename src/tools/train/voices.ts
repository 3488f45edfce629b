import type { Group } from './groups.ts';

/** Without its signs, but for those inside numbers and words. */
const unpunctuated = (text: string): string =>
  text
    .replace(/[.,;:!?](?=\s|$)/g, '')
    .replace(/["“”()]/g, '')
    .replace(/ {2,}/g, ' ')
    .trim();

/** What a sentence that leans on the one before it begins with. */
const leaning =
  /^(?:and|but|so|or|then|it|its|that|thats|this|these|those|they|which|because|if|also|plus|with|for|at|on|no|not|same|both|each|he|she|about|per|in|until|till|to|of|sorry|actually)\b/i;

/** With its last sentence first: what is asked stands before what is told. */
function askedFirst(text: string): string {
  const sentences = text.match(/[^.?!\n]+(?:[.](?=\d)[^.?!\n]+)*[.?!]+/g)?.map(s => s.trim()) ?? [];
  const last = sentences.at(-1);
  if (!last || sentences.length < 2 || leaning.test(last) || sentences.join(' ').length < text.trim().length)
    return text;
  return [last, ...sentences.slice(0, -1)].join(' ');
}

const voices: readonly ((text: string) => string)[] = [
  unpunctuated,
  askedFirst,
  text => unpunctuated(text).toLowerCase(),
  askedFirst,
  unpunctuated,
  text => text.toUpperCase(),
];

/** Whether the order of its sentences says something: days told one by one, a slip put right. */
const hasOrder = ({ states }: Group): boolean => 'days' in states || 'corrects' in states;

/** Each group told once more in another voice: the question first, without punctuation, in capitals. */
export const inMoreVoices = (groups: readonly Group[]): Group[] =>
  groups.map((group, n) => {
    const text = group.wordings[n % group.wordings.length]!;
    const voice = voices[n % voices.length]!;
    const said = voice === askedFirst && hasOrder(group) ? unpunctuated(text) : voice(text);
    return said === text
      ? { ...group, wordings: [...group.wordings, unpunctuated(text).toLowerCase()] }
      : { ...group, wordings: [...group.wordings, said] };
  });
