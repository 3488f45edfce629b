import type { ParsedMessage } from '#language/reading.ts';

const mostWords = 6;

/** Whether a short message asks after a word, whatever that is a part of: "what is the alternator?" */
export const asksAfterWord = ({ cues, words }: Pick<ParsedMessage, 'cues' | 'words'>): boolean =>
  cues.has('ask-what-is') && words <= mostWords;
