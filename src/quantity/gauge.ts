/**
 * Wire gauge AWG, the same as B&S: diameter 0.127 mm × 92^((36 − n) / 39), from the definition in ASTM B258.
 * 0, −1, −2, −3 stand for 1/0, 2/0, 3/0, 4/0.
 */
export const diameterOfGauge = (n: number): number => 0.127 * 92 ** ((36 - n) / 39);

/** Copper of a gauge, mm² (solid). */
export const areaOfGauge = (n: number): number => (Math.PI / 4) * diameterOfGauge(n) ** 2;

/** The gauge (not rounded) of an area, mm²: the smaller the number, the thicker. */
export const gaugeOfArea = (mm2: number): number =>
  36 - (39 * Math.log(Math.sqrt((4 * mm2) / Math.PI) / 0.127)) / Math.log(92);

/** "10 AWG", "2/0 AWG". */
export const gaugeName = (n: number): string => `${n > 0 ? n : `${1 - n}/0`} AWG`;
