/**
 * Current that a single conductor carries, A, by gauge: insulation for 105 °C and for 75 °C, outside an engine
 * space. ABYC E-11 (from memory). The 75 °C column is reckoned with: nobody knows what insulation is on the reel.
 */
export const ampacity: readonly (readonly [gauge: number, at105: number, at75: number])[] = [
  [18, 20, 10],
  [16, 25, 15],
  [14, 35, 20],
  [12, 45, 25],
  [10, 60, 40],
  [8, 80, 65],
  [6, 120, 95],
  [4, 160, 125],
  [2, 210, 170],
  [1, 245, 195],
  [0, 285, 230],
  [-1, 330, 265],
  [-2, 385, 310],
  [-3, 445, 360],
];
