import { table } from '../table.ts';

/** Number words that stand for themselves. */
export const ones = table({
  zero: 0, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, eleven: 11, twelve: 12,
  thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16, seventeen: 17, eighteen: 18, nineteen: 19, twoo: 2, fourty: 40,
  ein: 1, eine: 1, einen: 1, zwei: 2, drei: 3, deux: 2, trois: 3, dos: 2, tres: 3, twee: 2, drie: 3,
});
export const tens = table({ twenty: 20, thirty: 30, forty: 40, fifty: 50, sixty: 60, seventy: 70, eighty: 80, ninety: 90 });
export const scales = table({ hundred: 100, thousand: 1000, hundered: 100, grand: 1000 });
/** Phrases that name a number, words apart by one space. */
export const numberPhrases = table({
  'a couple of': 2, 'a couple': 2, 'couple of': 2, couple: 2, 'a pair of': 2, 'pair of': 2, 'a few': 3, 'a handful of': 4, 'a dozen': 12, dozen: 12,
  'half a dozen': 6, 'a half': 0.5, half: 0.5, 'one half': 0.5, 'a quarter': 0.25, 'a quarter of': 0.25, 'three quarters': 0.75, 'three quarters of': 0.75,
  'a third': 1 / 3, 'a third of': 1 / 3, 'two thirds': 2 / 3, 'two thirds of': 2 / 3, 'one and a half': 1.5, 'half of': 0.5, 'half an': 0.5, 'half a': 0.5,
  'a hundred': 100, 'a thousand': 1000, 'a hundred and': 100, 'a single': 1, single: 1, 'a ton': 100, 'a whole': 1, 'a full': 1,
});
/** "once a day", "twice daily": how many times. */
export const timesWords = table({ once: 1, twice: 2, thrice: 3 });
