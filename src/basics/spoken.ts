/** Whether it is a word of a message, and no number or sign. */
export const isSpoken = (word: string): boolean => /^\p{L}/u.test(word);
