import { rule } from '#rule/rule.ts';

export const conductorResistance = rule({
  name: 'conductorResistance',
  says: 'Resistance of a metre of cable from its copper; strands are laid in a twist, which makes them longer.',
  formula: 'rho * k_l / S',
  symbols: {
    rho: { says: 'resistivity of copper at 20 °C', unit: 'Ω·mm²/m' },
    k_l: { says: 'how much more flexible cable has than solid copper', unit: '' },
    S: { says: 'copper area', unit: 'mm²' },
  },
  gives: { symbol: 'r_20', unit: 'Ω/m' },
  source: 'IEC 60028 (1/58 Ω·mm²/m); the twist from IEC 60228 class 5',
});

export const warmResistance = rule({
  name: 'warmResistance',
  says: 'Warm copper resists more: about 4 % for each 10 degrees.',
  formula: 'r_20 * (1 + alpha * (T - T_20))',
  symbols: {
    r_20: { says: 'resistance of a metre at 20 °C', unit: 'Ω/m' },
    alpha: { says: 'change with temperature', unit: '1/K' },
    T: { says: 'temperature of the copper', unit: '°C' },
    T_20: { says: '20 °C', unit: '°C' },
  },
  gives: { symbol: 'r', unit: 'Ω/m' },
  source: 'IEC 60028',
});

export const voltageDrop = rule({
  name: 'voltageDrop',
  says: 'The current flows there and back, so the length counts twice.',
  formula: '2 * L * I * r',
  symbols: {
    L: { says: 'length one way', unit: 'm' },
    I: { says: 'current', unit: 'A' },
    r: { says: 'resistance of a metre', unit: 'Ω/m' },
  },
  gives: { symbol: 'V_d', unit: 'V' },
  source: "Ohm's law",
});

export const dropPercent = rule({
  name: 'dropPercent',
  says: 'The drop as a share of the system’s voltage.',
  formula: '100 * V_d / V',
  symbols: {
    V_d: { says: 'voltage drop', unit: 'V' },
    V: { says: 'nominal voltage', unit: 'V' },
  },
  gives: { symbol: 'p', unit: '%' },
  source: 'definition',
});

export const strandArea = rule({
  name: 'strandArea',
  says: 'The copper of a cable is what its strands add up to, whatever the size on the reel.',
  formula: 'n * pi / 4 * d^2',
  symbols: {
    n: { says: 'strands', unit: '' },
    d: { says: 'diameter of one', unit: 'mm' },
  },
  gives: { symbol: 'S', unit: 'mm²' },
  source: 'definition',
});

export const fuseLeast = rule({
  name: 'fuseLeast',
  says: 'A fuse must be a quarter above the continuous current, or it tires and blows.',
  formula: 'k_f * I',
  symbols: {
    k_f: { says: 'margin, 125 %', unit: '' },
    I: { says: 'continuous current', unit: 'A' },
  },
  gives: { symbol: 'I_f', unit: 'A' },
  source: '125 % rule of the NEC (from memory), common practice',
});

export const ampacityBetween = rule({
  name: 'ampacityBetween',
  says: 'What a cable carries grows with its copper, a little slower than in proportion.',
  formula: 'I_1 * (S / S_1)^(log(I_2 / I_1) / log(S_2 / S_1))',
  symbols: {
    I_1: { says: 'current of the next thinner gauge', unit: 'A' },
    S: { says: 'copper area', unit: 'mm²' },
    S_1: { says: 'area of the next thinner gauge', unit: 'mm²' },
    I_2: { says: 'current of the next thicker gauge', unit: 'A' },
    S_2: { says: 'area of the next thicker gauge', unit: 'mm²' },
  },
  tells: ['S', 'S_1', 'I_1'],
  gives: { symbol: 'I_z', unit: 'A' },
  source: 'ABYC E-11, 75 °C insulation (from memory), between its gauges',
});
