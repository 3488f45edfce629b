const english = 'en-AU';

// Making a formatter costs 20 µs, using a held one 0.4 µs.
const make = (locale: string): readonly Intl.NumberFormat[] =>
  [0, 1, 2, 3, 4].map(
    digits => new Intl.NumberFormat(locale, { maximumFractionDigits: digits, useGrouping: 'min2' }),
  );
const inEnglish = make(english);
const held = new Map([[english, inEnglish]]);

/** The formatters of a locale ("de-DE"), by their decimals. */
function formatters(locale: string): readonly Intl.NumberFormat[] {
  const found = held.get(locale) ?? make(locale);
  held.set(locale, found);
  return found;
}

/** A number with at most `digits` decimals (0–4) and no trailing noughts: 41.67 → "41.7" at 1, "41,7" in German. */
export function decimals(value: number, digits: number, locale?: string): string {
  const list = locale === undefined ? inEnglish : formatters(locale);
  return list[Math.max(0, Math.min(4, digits))]!.format(value === 0 ? 0 : value);
}

/** A number to `digits` significant figures (default 3), never more than four decimals: 1234.5 → "1235", 0.4567 → "0.457". */
export function significant(value: number, digits = 3, locale?: string): string {
  if (!Number.isFinite(value)) return String(value);
  if (value === 0) return '0';
  return decimals(value, digits - 1 - Math.floor(Math.log10(Math.abs(value))), locale);
}

/** A number as a person would say it of a measured thing: two figures below ten, whole above: 3.71 → "3.7", 41.67 → "42". */
export function plain(value: number, locale?: string): string {
  return Math.abs(value) < 9.95 ? decimals(value, 1, locale) : decimals(value, 0, locale);
}
