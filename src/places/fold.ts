const marks = /\p{M}/gu;
// Letters that don't come apart into a letter and a mark.
const letters: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
  ð: 'd',
  ı: 'i',
};
const plain = /^[a-z0-9 ]*$/;

/** A name as it is looked up: lower case, no accents, apostrophes or stops, hyphens as spaces: "Saint-Malô" → "saint malo". */
export function fold(name: string): string {
  const lower = name.toLowerCase();
  if (plain.test(lower)) return lower;
  return lower
    .normalize('NFD')
    .replace(marks, '')
    .replace(/[øłđßæœþðı]/g, letter => letters[letter] as string)
    .replace(/['’ʻ`.]/g, '')
    .replace(/[-–,]/g, ' ')
    .trim();
}
