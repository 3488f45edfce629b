import { rule } from '#rule/rule.ts';

export const usableCapacity = rule({
  name: 'usableCapacity',
  says: 'Only part of the number on the label can be used: how deep you may go, how fast you draw, how cold and how old it is.',
  formula: 'C * DoD * k_rate * k_temp * k_age',
  symbols: {
    C: { says: 'capacity on the label', unit: 'Ah' },
    DoD: { says: 'depth of discharge: the share you use', unit: '' },
    k_rate: { says: 'what is left of it at this current', unit: '' },
    k_temp: { says: 'what is left of it at this temperature', unit: '' },
    k_age: { says: 'what is left of it at this age', unit: '' },
  },
  gives: { symbol: 'Q_usable', unit: 'Ah' },
  source: 'common practice; the factors multiply as in IEEE 485',
});

export const rateFactor = rule({
  name: 'rateFactor',
  says: 'Drawn faster than its rating, a battery gives less; never more than the label.',
  formula: 'min(1, (C / (I * H))^(k - 1))',
  symbols: {
    C: { says: 'capacity on the label', unit: 'Ah' },
    I: { says: 'current drawn', unit: 'A' },
    H: { says: 'hours of the rating', unit: 'h' },
    k: { says: 'Peukert exponent', unit: '' },
  },
  gives: { symbol: 'k_rate', unit: '' },
  source: "Peukert's law, textbook form for a capacity at H hours",
});

export const chargeOfEnergy = rule({
  name: 'chargeOfEnergy',
  says: 'Watt hours divided by volts are amp hours.',
  formula: 'E / V',
  symbols: { E: { says: 'energy', unit: 'Wh' }, V: { says: 'nominal voltage', unit: 'V' } },
  gives: { symbol: 'Q', unit: 'Ah' },
  source: 'definition',
});

export const runTime = rule({
  name: 'runTime',
  says: 'How long it lasts is what you can use divided by what you draw.',
  formula: 'Q_usable / I',
  symbols: {
    Q_usable: { says: 'usable capacity', unit: 'Ah' },
    I: { says: 'average current', unit: 'A' },
  },
  gives: { symbol: 't', unit: 'h' },
  source: 'definition',
});

export const capacityNeeded = rule({
  name: 'capacityNeeded',
  says: 'The label must show more than you use: the share you leave in, the cold and the age come on top.',
  formula: 'Q / (DoD * k_temp * k_age)',
  symbols: {
    Q: { says: 'charge to be used', unit: 'Ah' },
    DoD: { says: 'depth of discharge: the share you use', unit: '' },
    k_temp: { says: 'what is left of the label at this temperature', unit: '' },
    k_age: { says: 'what is left of the label at this age', unit: '' },
  },
  gives: { symbol: 'C', unit: 'Ah' },
  source: 'common practice; the factors multiply as in IEEE 485',
});

export const capacityForRate = rule({
  name: 'capacityForRate',
  says: 'A battery drawn faster than its rating must be bigger by what the haste costs.',
  formula: 'C * max(1, (I * H / C)^((k - 1) / k))',
  symbols: {
    C: { says: 'capacity needed at the rating', unit: 'Ah' },
    I: { says: 'current drawn', unit: 'A' },
    H: { says: 'hours of the rating', unit: 'h' },
    k: { says: 'Peukert exponent', unit: '' },
  },
  gives: { symbol: 'C_I', unit: 'Ah' },
  source: "Peukert's law, textbook form, solved for the capacity",
});

export const blockResistance = rule({
  name: 'blockResistance',
  says: 'A bigger battery has less resistance inside, in proportion.',
  formula: 'r_100 * C_100 / C * n_s',
  symbols: {
    r_100: { says: 'resistance of a 100 Ah block', unit: 'Ω' },
    C_100: { says: '100 Ah', unit: 'Ah' },
    C: { says: 'capacity of the bank', unit: 'Ah' },
    n_s: { says: 'blocks in series', unit: '' },
  },
  gives: { symbol: 'R_i', unit: 'Ω' },
  source: 'resistances in parallel and in series (physics)',
});

export const voltageUnderLoad = rule({
  name: 'voltageUnderLoad',
  says: 'Under load the volts sag by the current times the resistance of battery and cable.',
  formula: 'V_rest - I * (R_i + R_c)',
  symbols: {
    V_rest: { says: 'voltage at rest', unit: 'V' },
    I: { says: 'current drawn', unit: 'A' },
    R_i: { says: 'resistance inside the battery', unit: 'Ω' },
    R_c: { says: 'resistance of the cable, there and back', unit: 'Ω' },
  },
  gives: { symbol: 'V_load', unit: 'V' },
  source: "physics: Ohm's law",
});

export const chargeLeft = rule({
  name: 'chargeLeft',
  says: 'What you can still use is what is in the battery above the part that you leave in.',
  formula: 'max(0, DoD - (1 - s)) * C',
  symbols: {
    DoD: { says: 'depth of discharge: the share you use', unit: '' },
    s: { says: 'state of charge', unit: '' },
    C: { says: 'capacity on the label', unit: 'Ah' },
  },
  gives: { symbol: 'Q_left', unit: 'Ah' },
  source: 'definition',
});

export const lifeEnergy = rule({
  name: 'lifeEnergy',
  says: 'Over its life a battery gives its usable energy once for every cycle that it stands.',
  formula: 'C * V * DoD * n',
  symbols: {
    C: { says: 'capacity on the label', unit: 'Ah' },
    V: { says: 'nominal voltage', unit: 'V' },
    DoD: { says: 'depth of discharge: the share you use', unit: '' },
    n: { says: 'cycles at that depth', unit: '' },
  },
  gives: { symbol: 'E_life', unit: 'Wh' },
  source: 'definition',
});

export const heatLife = rule({
  name: 'heatLife',
  says: 'Lead-acid lasts half as long for every 10 degrees that it lives above 25 °C.',
  formula: '2^(-max(0, (T - T_25) / T_10))',
  symbols: {
    T: { says: 'battery temperature', unit: '°C' },
    T_25: { says: '25 °C', unit: '°C' },
    T_10: { says: 'ten kelvin', unit: 'K' },
  },
  gives: { symbol: 'k_life', unit: '' },
  source: 'common practice: the chemist’s rule that ten degrees double a reaction',
});

export const lithiumColdFactor = rule({
  name: 'lithiumColdFactor',
  says: 'A lithium battery gives about one per cent less for each degree below 15 °C.',
  formula: 'max(0.5, min(1, 1 - (T_15 - T) / T_100))',
  symbols: {
    T_15: { says: '15 °C', unit: '°C' },
    T: { says: 'battery temperature', unit: '°C' },
    T_100: { says: 'a hundred kelvin', unit: 'K' },
  },
  tells: ['T'],
  gives: { symbol: 'k_temp', unit: '' },
  source: 'cell makers’ sheets that agree, common practice',
});

export const bankCharge = rule({
  name: 'bankCharge',
  says: 'Batteries in parallel add their amp hours; in series they do not.',
  formula: 'n_p * C',
  symbols: {
    n_p: { says: 'strings in parallel', unit: '' },
    C: { says: 'capacity of one', unit: 'Ah' },
  },
  gives: { symbol: 'C_bank', unit: 'Ah' },
  source: 'definition',
});

export const bankVolts = rule({
  name: 'bankVolts',
  says: 'Batteries in series add their volts; in parallel they do not.',
  formula: 'n_s * V',
  symbols: { n_s: { says: 'in series', unit: '' }, V: { says: 'nominal voltage of one', unit: 'V' } },
  gives: { symbol: 'V_bank', unit: 'V' },
  source: 'definition',
});

export const capacityOfDepths = rule({
  name: 'capacityOfDepths',
  says: 'A battery cycled for years must be big enough for the whole time, for each day, and at the end of its life: the largest counts.',
  formula: 'max(Q / d_max, Q_day / d_day, Q / d_end)',
  symbols: {
    Q: { says: 'charge to be used over the whole time', unit: 'Ah' },
    Q_day: { says: 'use a day', unit: 'Ah' },
    d_max: { says: 'deepest that it may go', unit: '' },
    d_day: { says: 'deepest that a day may take it', unit: '' },
    d_end: { says: 'what it still holds at the end of its life', unit: '' },
  },
  gives: { symbol: 'C', unit: 'Ah' },
  source: 'IEEE 1013, sizing for stand-alone systems',
});
