import { rule } from '#rule/rule.ts';

export const stringVoltage = rule({
  name: 'stringVoltage',
  says: 'Panels in series add their open-circuit volts; panels in parallel keep those of one.',
  formula: 'n_s * V_oc',
  symbols: {
    n_s: { says: 'panels in series', unit: '' },
    V_oc: { says: "open-circuit voltage on a panel's label", unit: 'V' },
  },
  gives: { symbol: 'V_s', unit: 'V' },
  source: 'definition',
});

export const coldVoltage = rule({
  name: 'coldVoltage',
  says: 'A cold panel gives more volts than its label, and the controller must stand them.',
  formula: 'V_s * (1 + beta * (T - T_0))',
  symbols: {
    V_s: { says: 'open-circuit voltage of the string at 25 °C', unit: 'V' },
    beta: { says: 'change of open-circuit voltage with temperature', unit: '1/K' },
    T: { says: 'coldest air that the sun rises in', unit: '°C' },
    T_0: { says: 'temperature of the label, 25 °C', unit: '°C' },
  },
  gives: { symbol: 'V_cold', unit: 'V' },
  source: 'IEC 60891, linear, from memory',
});

export const trackedCurrent = rule({
  name: 'trackedCurrent',
  says: 'An MPPT controller turns the power of the panels into current at the battery.',
  formula: 'P * eta / V',
  symbols: {
    P: { says: "panels' rating", unit: 'W' },
    eta: { says: 'efficiency of the controller', unit: '' },
    V: { says: 'battery voltage while charging', unit: 'V' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});

export const fullPowerCurrent = rule({
  name: 'fullPowerCurrent',
  says: "A panel's current at full power: its watts by its volts there, a share of the open-circuit ones.",
  formula: 'P / (k_mp * V_oc)',
  symbols: {
    P: { says: "one panel's rating", unit: 'W' },
    k_mp: { says: 'share of the open-circuit voltage at full power', unit: '' },
    V_oc: { says: "open-circuit voltage on a panel's label", unit: 'V' },
  },
  gives: { symbol: 'I_mp', unit: 'A' },
  source: 'definition',
});

export const switchedCurrent = rule({
  name: 'switchedCurrent',
  says: 'A PWM controller passes the current of the panels as it is: that of one string times the strings.',
  formula: 'n_p * I_mp',
  symbols: {
    n_p: { says: 'strings in parallel', unit: '' },
    I_mp: { says: "a panel's current at full power", unit: 'A' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'common practice',
});
