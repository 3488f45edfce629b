import { files, read } from '../house/source.ts';

/** Messages as people write them: all of the phrases.json files and of the cases. */
export const corpus: readonly string[] = [
  ...files('intents/*/phrases.json').flatMap(path =>
    (JSON.parse(read(path)) as { say: string }[]).map(row => row.say),
  ),
  ...files('tests/cases/*.jsonl').flatMap(path =>
    read(path)
      .split('\n')
      .filter(Boolean)
      .flatMap(line => (JSON.parse(line) as { turns: { text: string }[] }).turns.map(turn => turn.text)),
  ),
];

/** A text of exactly `length` characters, made of a piece over and over. */
export const filled = (piece: string, length: number): string =>
  piece.repeat(Math.ceil(length / piece.length)).slice(0, length);

/** Pieces that make long messages of every sort, also such as nobody writes in good faith. */
export const pieces: Readonly<Record<string, string>> = {
  'the corpus itself': `${corpus.join('. ')}. `,
  nines: '9',
  'one letter': 'a',
  spaces: ' ',
  quantities: '1.2A 100Ah 3 days ',
  numbers: '12 34.5 6 ',
  commas: '1,',
  dots: '1.',
  brackets: '((((',
  signs: '-/x*?!',
  'unknown words': 'zorp quux fnord ',
  'names of things': 'fridge lights pump fan cpap ',
  claims: 'sam says 2 days, ness says 4 days. ',
  persons: 'sam ness kim lou bob pat ',
  'long numbers': '123456789012345678901234567890 1,234,567, 1 000 000 ',
  'numbers and letters': '1a2b3c',
  slips: 'fridgge battrey soler pannel chargr ',
  'unknown towns': 'near Zorpville in Quuxton ',
  'a long unknown word': 'qwzx',
  'days of a plan': 'day 1 drive 3 h sunny, day 2 none cloudy. ',
  weekdays: 'x sun mon then tue 2 h, ',
  times: '2 min 3 4 5 6 7 8 times twice ',
  dangers: 'smoke battery swollen bms 100A fuse 30A gas in the tent ',
  'new lines': 'fridge\n\n1A\n',
  'two-unit letters': '🏕',
};
