/** "A" or "a" before a number; behind a number an A is amps. */
const beforeNumber = /(?<![\d¼½¾] )\b([aA]) (\d[\d,.]{0,9})/g;
/** One of something, and a plural behind it: "1 days"; "0.1 days", "2–1 days" and "1¼ days" are none. */
const oneOf = /(?<![\d.,–−½¼¾-])1 (day|hour|minute|night|week|panel|month|year)s\b/g;

/** Whether a number is said with a vowel first: 8, 80, 8.5, 800, 8,000; 11 and 18, and thousands of them. */
function isVowelFirst(number: string): boolean {
  const [whole = '', ...groups] = number.replace(/\.\d*$/, '').split(',');
  return whole.startsWith('8') || (/^1[18]$/.test(whole) && groups.length < 2);
}

/** Puts right what numbers do to words around them: "A 80 Ah bank" is "An 80 Ah bank", "1 days" is "1 day". */
export const inGrammar = (text: string): string =>
  text
    .replace(beforeNumber, (whole, a: string, number: string) =>
      isVowelFirst(number) ? `${a}n ${number}` : whole,
    )
    .replace(oneOf, (_, word: string) => `1 ${word}`);
