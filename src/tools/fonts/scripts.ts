/** What each font of the pictures is cut down to. */
export interface Subset {
  /** File in `src/answer/chart/fonts/`. */
  readonly name: string;
  /** Package and file that it comes from, with the version it was made of. */
  readonly from: string;
  readonly characters: () => string;
}

const range = (from: number, to: number): string =>
  Array.from({ length: to - from + 1 }, (_, i) => String.fromCodePoint(from + i)).join('');

/** Every two-byte character of a coded set, by its rows. */
const coded = (encoding: string, rows: readonly [number, number], fromCell = 0xa1): string => {
  const decoder = new TextDecoder(encoding);
  const found: string[] = [];
  for (let row = rows[0]; row <= rows[1]; row++)
    for (let cell = fromCell; cell <= 0xfe; cell++) found.push(decoder.decode(Uint8Array.of(row, cell)));
  return found.filter(text => [...text].length === 1 && text !== '\ufffd').join('');
};

/** Latin, Greek and Cyrillic with their marks, and the signs that charts use. */
const european = (): string =>
  [
    range(0x20, 0x7e),
    range(0xa0, 0x24f),
    range(0x2b0, 0x36f),
    range(0x370, 0x3ff),
    range(0x400, 0x52f),
    range(0x1e00, 0x1eff),
    range(0x2000, 0x205f),
    range(0x2070, 0x209f),
    range(0x20a0, 0x20bf),
    range(0x2100, 0x218f),
    range(0x2190, 0x2199),
    range(0x2200, 0x2265),
    '\ufffd',
  ].join('');

/**
 * Spaces, signs and Latin, in every font: a line that changes its font is drawn whole in the new one, or where its
 * letters join not at all.
 */
const shared = (): string => `${range(0x20, 0x7e)}\u00a0·×…`;

/** Kana, and the Han of GB 2312, of JIS X 0208 level 1 and of Big5 level 1: nearly every name in use. */
const han = (): string =>
  [
    shared(),
    range(0x3000, 0x30ff),
    range(0xff01, 0xff60),
    coded('gbk', [0xb0, 0xf7]),
    coded('euc-jp', [0xb0, 0xcf]),
    coded('big5', [0xa4, 0xc6], 0x40),
  ].join('');

const google = (font: string, version: string, file: string): string =>
  `@expo-google-fonts/${font}@${version}/${file}`;

export const subsets: readonly Subset[] = [
  {
    name: 'regular',
    from: google('inter', '0.4.2', '400Regular/Inter_400Regular.ttf'),
    characters: european,
  },
  {
    name: 'semibold',
    from: google('inter', '0.4.2', '600SemiBold/Inter_600SemiBold.ttf'),
    characters: european,
  },
  {
    name: 'hebrew',
    from: google('noto-sans-hebrew', '0.4.1', '400Regular/NotoSansHebrew_400Regular.ttf'),
    characters: () => shared() + range(0x590, 0x5ff),
  },
  {
    name: 'arabic',
    from: google('noto-sans-arabic', '0.4.3', '400Regular/NotoSansArabic_400Regular.ttf'),
    characters: () => shared() + range(0x600, 0x6ff) + range(0x750, 0x77f),
  },
  {
    name: 'devanagari',
    from: google('noto-sans-devanagari', '0.4.1', '400Regular/NotoSansDevanagari_400Regular.ttf'),
    characters: () => shared() + range(0x900, 0x97f) + range(0x200c, 0x200d),
  },
  {
    name: 'thai',
    from: google('noto-sans-thai', '0.4.2', '400Regular/NotoSansThai_400Regular.ttf'),
    characters: () => shared() + range(0xe00, 0xe7f),
  },
  {
    name: 'hangul',
    from: google('noto-sans-kr', '0.4.3', '400Regular/NotoSansKR_400Regular.ttf'),
    // The 2,350 syllables of KS X 1001.
    characters: () => shared() + coded('euc-kr', [0xb0, 0xc8]),
  },
  {
    name: 'han',
    from: google('noto-sans-sc', '0.4.3', '400Regular/NotoSansSC_400Regular.ttf'),
    characters: han,
  },
];
