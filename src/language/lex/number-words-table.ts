/** Number words as people say and spell them. */
export const ones: Readonly<Record<string, number>> = {
  zero: 0,
  nought: 0,
  naught: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  forteen: 14,
  fifteen: 15,
  fiveteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  tree: 3,
  fower: 4,
};
export const tens: Readonly<Record<string, number>> = {
  twenty: 20,
  twnety: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  fifthy: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  eigthy: 80,
  ninety: 90,
  ninty: 90,
};
export const digitWord: Readonly<Record<string, string>> = {
  zero: '0',
  oh: '0',
  o: '0',
  nought: '0',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
};
export const fractions: Readonly<Record<string, number>> = {
  half: 0.5,
  quarter: 0.25,
  third: 1 / 3,
  thirds: 1 / 3,
  quarters: 0.25,
  fifth: 0.2,
  eighth: 0.125,
};
/** Into how many a whole is parted, by the name of one part or of several. */
export const partsOfWhole: Readonly<Record<string, number>> = {
  half: 2,
  third: 3,
  thirds: 3,
  quarter: 4,
  quarters: 4,
  fifth: 5,
  fifths: 5,
  sixth: 6,
  sixths: 6,
  eighth: 8,
  eighths: 8,
  tenth: 10,
  tenths: 10,
};
export const counts: Readonly<Record<string, number>> = {
  couple: 2,
  cupla: 2,
  coupla: 2,
  pair: 2,
  both: 2,
  dozen: 12,
  twin: 2,
  brace: 2,
};
/** Whole volts of batteries of 12, 24 and 48 V, low and high: readings are said without their point. */
export const spokenVolts: readonly (readonly [low: number, high: number])[] = [
  [10, 15],
  [21, 30],
  [42, 60],
];
/** What may follow a reading that was said so: not a thing or a unit that the digit could count. */
export const afterVolts: ReadonlySet<string> = new Set(
  'v volt volts on at with w and after is now here under in this resting rested rest overnight idle idling no or but full then when while rx tx for over today tonight since showing across flat per'.split(
    ' ',
  ),
);
/** Every word that a number told in words may open with: most words of a message open none. */
export const opensNumber: ReadonlySet<string> = new Set([
  ...[ones, tens, counts].flatMap(table => Object.keys(table)),
  ...'a an point dot oh half arf quarter third hundred thousand'.split(' '),
]);
