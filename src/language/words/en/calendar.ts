import { table } from '../table.ts';

/** Months as people write them. */
export const months = table({
  january: 1, jan: 1, february: 2, feb: 2, febuary: 2, march: 3, mar: 3, april: 4, apr: 4, may: 5, june: 6, jun: 6, july: 7, jul: 7, august: 8, aug: 8,
  september: 9, sep: 9, sept: 9, october: 10, oct: 10, november: 11, nov: 11, december: 12, dec: 12, christmas: 12, xmas: 12, januar: 1, februar: 2, märz: 3, mai: 5, juni: 6, juli: 7, oktober: 10, dezember: 12,
  // As Portuguese, Spanish, French, Italian and Dutch write them, without accents.
  janeiro: 1, fevereiro: 2, fev: 2, março: 3, abril: 4, maio: 5, junho: 6, julho: 7, agosto: 8, setembro: 9, outubro: 10, novembro: 11, dezembro: 12,
  enero: 1, febrero: 2, marzo: 3, mayo: 5, junio: 6, julio: 7, septiembre: 9, octubre: 10, noviembre: 11, diciembre: 12,
  janvier: 1, fevrier: 2, avril: 4, juin: 6, juillet: 7, aout: 8, septembre: 9, octobre: 10, novembre: 11, decembre: 12,
  gennaio: 1, febbraio: 2, aprile: 4, maggio: 5, giugno: 6, luglio: 7, settembre: 9, ottobre: 10, dicembre: 12,
  januari: 1, februari: 2, maart: 3, augustus: 8,
});
/** Months that are also everyday words. */
export const doubtfulMonths: ReadonlySet<string> = new Set(['may', 'march', 'mar', 'mai', 'mayo', 'dec', 'christmas', 'xmas']);

/** Days of the week, Monday 0. */
export const weekdays = table({
  monday: 0, mon: 0, tuesday: 1, tue: 1, tues: 1, wednesday: 2, wed: 2, weds: 2, thursday: 3, thu: 3, thur: 3, thurs: 3, friday: 4, fri: 4, saturday: 5, sat: 5, sunday: 6, sun: 6,
});
/** Days that are also everyday words: they count only beside another day or a word of time. */
export const doubtfulDays: ReadonlySet<string> = new Set(['sun', 'sat', 'mon', 'wed', 'weds', 'fri', 'thu', 'tue']);

/** Times of day by name, hour of the clock. */
export const dayTimes = table({ noon: 12, midday: 12, midnight: 24, lunch: 12.5, lunchtime: 12.5, breakfast: 8, morning: 9, dinner: 18, teatime: 18, evening: 19, arvo: 15, afternoon: 15, dawn: 6, sunrise: 6, dusk: 18, sunset: 18, night: 21, brekkie: 8, tea: 18, supper: 19, suppertime: 19, bedtime: 22, sundown: 18, sunup: 6, nightfall: 19, daybreak: 6 });
