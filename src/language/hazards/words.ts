/** A word or number of a message, lower case, without marks, and where it stands. */
export interface Word {
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** Which sentence of the message it stands in. */
  readonly sentence: number;
  /** The number that it writes in digits, with the minus sign before it where there is one. */
  readonly value?: number;
}

/** In this order: a number, a word, what ends a sentence, a sign. Numbered groups: named ones cost a third more. */
const piece = /([-−–]?\d+(?:[.,]\d+)*)|(\p{L}+(?:['’`]\p{L}+)*)|([!?…]|\.(?=\s|$))|([²°%])/gu;

/** "1,500" has thousands, "2,5" a decimal comma. */
const numberIn = (digits: string): number =>
  Number(
    /^[-−–]?\d{1,3}(?:,\d{3})+$/.test(digits)
      ? digits.replaceAll(',', '')
      : digits.replace(',', '.').replace(/[−–]/, '-'),
  );

/** "battery's" and "won't" as the lexicon writes them: battery, wont. */
const plain = (word: string): string => {
  const lower = word.toLowerCase();
  return /['’`]/.test(lower) ? lower.replace(/['’`]s$/, '').replace(/['’`]/g, '') : lower;
};

/**
 * Cuts a message into plain words; signs ² ° % are words of their own. A dash before a number is a minus only
 * after a space or at the start, so that "7-pin" and "20-30" have none.
 */
export function wordsOf(text: string): readonly Word[] {
  const words: Word[] = [];
  let sentence = 0;
  for (const match of text.matchAll(piece)) {
    const [, number, word, stop, sign] = match;
    const start = match.index;
    const end = start + match[0].length;
    if (stop !== undefined) sentence += 1;
    else if (word !== undefined) words.push({ text: plain(word), start, end, sentence });
    else if (sign !== undefined) words.push({ text: sign, start, end, sentence });
    else if (number !== undefined) {
      const joined = start > 0 && /[\p{L}\p{N}]/u.test(text[start - 1]!);
      const digits = joined ? number.replace(/^[-−–]/, '') : number;
      const value = numberIn(digits);
      words.push({
        text: digits.replace(/^[-−–]/, ''),
        start,
        end,
        sentence,
        ...(Number.isFinite(value) ? { value } : {}),
      });
    }
  }
  return words;
}
