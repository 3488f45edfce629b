import { rule } from '#rule/rule.ts';

export const heatShare = rule({
  name: 'heatShare',
  says: 'In hot air a cable has less room to warm up before its insulation suffers; in cool air no more is counted.',
  formula: 'min(1, sqrt(max(0, (T_i - T_a) / (T_i - T_0))))',
  symbols: {
    T_i: { says: 'what the insulation stands', unit: '°C' },
    T_a: { says: 'air around the cable', unit: '°C' },
    T_0: { says: 'air that the table is for', unit: '°C' },
  },
  gives: { symbol: 'k_T', unit: '' },
  source: 'heat grows with the square of the current (physics); NEC 310.15 has the same form (from memory)',
});

export const carriedCurrent = rule({
  name: 'carriedCurrent',
  says: 'What a cable carries where it lies: less in hot air, less in a bundle.',
  formula: 'I_z * k_T * k_b',
  symbols: {
    I_z: { says: 'what it carries alone, by the table', unit: 'A' },
    k_T: { says: 'share left in the heat', unit: '' },
    k_b: { says: 'share left in a bundle', unit: '' },
  },
  gives: { symbol: 'I_c', unit: 'A' },
  source: 'ABYC E-11 (from memory), common practice',
});

export const panelShortCircuit = rule({
  name: 'panelShortCircuit',
  says: 'The most that panels give, into a short: a little above their current at full power.',
  formula: 'k_sc * P / (n_s * k_mp * V_oc)',
  symbols: {
    k_sc: { says: 'short-circuit current against that at full power', unit: '' },
    P: { says: 'panels, by their label', unit: 'W' },
    n_s: { says: 'panels in series', unit: '' },
    k_mp: { says: 'volts at full power against open circuit', unit: '' },
    V_oc: { says: 'open-circuit voltage of one', unit: 'V' },
  },
  gives: { symbol: 'I_sc', unit: 'A' },
  source: 'power = volts × amps (physics)',
});

export const panelContinuous = rule({
  name: 'panelContinuous',
  says: 'Bright sun and the edge of a cloud push a panel a quarter above its label for long.',
  formula: 'k_i * I_sc',
  symbols: {
    k_i: { says: 'margin for bright sun, 125 %', unit: '' },
    I_sc: { says: 'short-circuit current', unit: 'A' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'common practice, after the American electrical code, NEC 690.8 (from memory)',
});

export const bankShortCircuit = rule({
  name: 'bankShortCircuit',
  says: 'What a bank drives through a dead short, which its fuse must be able to break.',
  formula: 'V_b / R_i',
  symbols: {
    V_b: { says: 'voltage of the bank', unit: 'V' },
    R_i: { says: 'resistance inside it at the first moment', unit: 'Ω' },
  },
  gives: { symbol: 'I_k', unit: 'A' },
  source: "Ohm's law",
});
