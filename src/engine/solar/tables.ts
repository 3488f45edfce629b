/** Day of the year whose sun stands for the mean of its month. Klein (1977), in Duffie & Beckman, table 1.6.1. */
export const meanDays = [17, 47, 75, 105, 135, 162, 198, 228, 258, 288, 318, 344] as const;

/** Solar constant, kW/m²: 0.0820 MJ/m² a minute. FAO Irrigation and Drainage Paper 56, eq. 21. */
export const solarConstantKWM2 = 0.082 / 0.06;

/**
 * Sun on flat ground at the world's towns by month, kWh/m² a day: nineteen in twenty have more than the first, and
 * nineteen in twenty less than the second. Of the fitted climate at 55,975 towns.
 */
export const townsSunKWhM2 = [
  [0.6, 6.4],
  [1.2, 6.1],
  [2.3, 6.3],
  [3.5, 6.6],
  [3.0, 6.9],
  [2.5, 7.4],
  [2.8, 7.3],
  [3.5, 6.6],
  [2.6, 5.9],
  [1.5, 6.0],
  [0.7, 6.3],
  [0.4, 6.5],
] as const;

/** Length of a day, h. */
export const dayH = 24;

/** What grass and sand throw back. Duffie & Beckman, example 2.19.1 (0.7 with snow). */
export const groundReflectance = 0.2;

/**
 * Heating of a panel in full sun by mount, K·m²/kW. Skoplaki & Palyvos (2009): 20.8 free-standing,
 * 26 flat roof well ventilated, 56.3 sloped roof not ventilated (a panel glued down is like it).
 */
export const mountHeating = {
  tilted: { value: 22, low: 18, high: 30, why: 'free-standing, air behind it' },
  flat: { value: 34, low: 24, high: 56, why: 'on a roof with a small gap; hotter where glued down' },
} as const;

/** Share of the yield left by shade words. Common practice: a shaded cell chokes its whole string. */
export const shadeShare = {
  none: { value: 1, low: 1, high: 1, why: 'no shade' },
  half: { value: 0.4, low: 0.2, high: 0.6, why: 'half in the shade costs more than half' },
  heavy: { value: 0.15, low: 0.05, high: 0.3, why: 'under trees next to nothing is left' },
} as const;

/** Clearness of a month, from 0.20 in steps of 0.05, for the two tables of spread. */
export const spreadFrom = { clearness: 0.2, step: 0.05 } as const;

/** Standard deviation of a day's sun from day to day within a month, as a share of its mean: daily values of 1,042 stations in one country (China). */
export const dayToDay = [0.76, 0.69, 0.61, 0.52, 0.44, 0.38, 0.32, 0.28, 0.23, 0.19] as const;

/** The same of a month's mean from year to year. */
export const yearToYear = [0.22, 0.21, 0.18, 0.15, 0.14, 0.12, 0.09, 0.07, 0.06, 0.05] as const;
