import { rule } from '#rule/rule.ts';

/** The heat-flow shape factor of a box's walls, edges and corners lies within 3 % of this (Langmuir, from memory). */
export const boxSurface = rule({
  name: 'boxSurface',
  says: 'Heat comes in over the walls of the box: the inside and half of the wall’s thickness count.',
  formula: 'g * (V^(1/3) + d / 2)^2',
  symbols: {
    g: { says: 'walls for each edge squared; a cube has 6', unit: '' },
    V: { says: 'volume of the box, a thousandth of its litres', unit: 'm³' },
    d: { says: 'thickness of the foam', unit: 'm' },
  },
  gives: { symbol: 'A', unit: 'm²' },
  source: 'physics: conduction through the walls of a box',
});

export const wallLeak = rule({
  name: 'wallLeak',
  says: 'Each degree of difference lets heat in: more through large and thin walls, and some more at lid and seals.',
  formula: 'k * A / d * (1 + s)',
  symbols: {
    k: { says: 'conductivity of the foam', unit: 'W/(m·K)' },
    A: { says: 'surface of the walls', unit: 'm²' },
    d: { says: 'thickness of the foam', unit: 'm' },
    s: { says: 'lid and seals, as a share of the walls', unit: '' },
  },
  gives: { symbol: 'UA', unit: 'W/K' },
  source: 'physics: conduction of heat',
});

export const heatGain = rule({
  name: 'heatGain',
  says: 'The heat to be pumped out again comes through the walls, and by openings and warm goods.',
  formula: 'UA * (T_a - T_s) * (1 + w)',
  symbols: {
    UA: { says: 'heat for each degree', unit: 'W/K' },
    T_a: { says: 'temperature outside', unit: '°C' },
    T_s: { says: 'set point', unit: '°C' },
    w: { says: 'openings and warm goods, as a share of the walls', unit: '' },
  },
  gives: { symbol: 'q', unit: 'W' },
  source: 'physics: conduction of heat; openings and warm goods: common practice',
});

export const coolingRatio = rule({
  name: 'coolingRatio',
  says: 'The watts of heat that a watt of power pumps out: a share of Carnot’s, falling as the lift grows.',
  formula: 'c * (T_e + T_0) / max(L, T_c - T_e + L)',
  symbols: {
    c: { says: 'share of Carnot’s', unit: '' },
    T_e: { says: 'cold plate, somewhat below the box', unit: '°C' },
    T_0: { says: '0 °C above absolute zero', unit: 'K' },
    T_c: { says: 'condenser, somewhat above the air', unit: '°C' },
    L: { says: 'friction, fan and electronics, as a lift more', unit: 'K' },
  },
  tells: ['T_e', 'T_c'],
  gives: { symbol: 'COP', unit: '' },
  source: 'physics: Carnot’s ratio; share and losses: common practice',
});

/** At least 5 %: its controls and fan draw in the cold too. */
export const compressorDuty = rule({
  name: 'compressorDuty',
  says: 'A compressor runs as long as it takes to pump out the heat that leaks in; in more heat than it can pump, all the time.',
  formula: 'max(0.05, min(1, q / (P * COP)))',
  symbols: {
    q: { says: 'heat to pump out', unit: 'W' },
    P: { says: 'power while it runs', unit: 'W' },
    COP: { says: 'heat for each watt of power', unit: '' },
  },
  gives: { symbol: 'd', unit: '' },
  source: 'physics: heat in equals heat out',
});
