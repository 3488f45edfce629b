import { rule } from '#rule/rule.ts';

export const chargeMissing = rule({
  name: 'chargeMissing',
  says: 'What is missing is the capacity times the share to be filled.',
  formula: 'C * (s_1 - s_0)',
  symbols: {
    C: { says: 'capacity on the label', unit: 'Ah' },
    s_1: { says: 'state of charge wanted', unit: '' },
    s_0: { says: 'state of charge now', unit: '' },
  },
  gives: { symbol: 'Q_m', unit: 'Ah' },
  source: 'definition',
});

export const chargerCurrent = rule({
  name: 'chargerCurrent',
  says: 'A charger rated in watts gives that many divided by the volts it charges at.',
  formula: 'P / V',
  symbols: {
    P: { says: 'what the charger puts out', unit: 'W' },
    V: { says: 'voltage while charging', unit: 'V' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});

export const currentLeft = rule({
  name: 'currentLeft',
  says: 'Of the current on offer what runs meanwhile takes its part; the rest is for the battery.',
  formula: 'I_s - min(I_s, I_l)',
  symbols: {
    I_s: { says: 'current on offer', unit: 'A' },
    I_l: { says: 'current of what runs meanwhile', unit: 'A' },
  },
  gives: { symbol: 'I_b', unit: 'A' },
  source: 'definition',
});

export const outputCurrent = rule({
  name: 'outputCurrent',
  says: 'A warm charger gives a little less than its rating.',
  formula: 'k_s * I_r',
  symbols: {
    k_s: { says: 'share of the rating that arrives', unit: '' },
    I_r: { says: 'rated current', unit: 'A' },
  },
  gives: { symbol: 'I_s', unit: 'A' },
  source: 'common practice',
});

export const converterInput = rule({
  name: 'converterInput',
  says: 'A DC-DC charger takes more amps than it gives: it lifts the voltage and wastes a little.',
  formula: 'I * V_o / (eta * V_i)',
  symbols: {
    I: { says: 'current it gives', unit: 'A' },
    V_o: { says: 'voltage it gives', unit: 'V' },
    eta: { says: 'its efficiency', unit: '' },
    V_i: { says: 'voltage it gets', unit: 'V' },
  },
  gives: { symbol: 'I_i', unit: 'A' },
  source: 'power in = power out ÷ efficiency (physics)',
});

export const chargerInput = rule({
  name: 'chargerInput',
  says: 'A charger asks more of the generator than it gives the battery: losses, and a current out of step with the voltage.',
  formula: 'I * V / (eta * pf)',
  symbols: {
    I: { says: 'charging current', unit: 'A' },
    V: { says: 'charging voltage', unit: 'V' },
    eta: { says: 'efficiency of the charger', unit: '' },
    pf: { says: 'power factor', unit: '' },
  },
  gives: { symbol: 'S', unit: 'W' },
  source: 'definition; volt-amperes are counted as watts',
});

export const apparentPower = rule({
  name: 'apparentPower',
  says: 'With a poor power factor a load asks for more volt-amps than its watts.',
  formula: 'P / pf',
  symbols: { P: { says: 'power', unit: 'W' }, pf: { says: 'power factor', unit: '' } },
  gives: { symbol: 'S', unit: 'W' },
  source: 'definition; volt-amperes are counted as watts',
});

export const altitudeFactor = rule({
  name: 'altitudeFactor',
  says: 'Thin air takes power from an engine.',
  formula: '1 - k_z * max(0, (z - z_0) / z_s)',
  symbols: {
    k_z: { says: 'loss for each step of height', unit: '' },
    z: { says: 'height above the sea', unit: 'm' },
    z_0: { says: 'height from which it counts', unit: 'm' },
    z_s: { says: 'step of height', unit: 'm' },
  },
  gives: { symbol: 'f_z', unit: '' },
  source: 'makers’ derating rules, common practice',
});

export const heatFactor = rule({
  name: 'heatFactor',
  says: 'Hot air takes power from an engine.',
  formula: '1 - k_T * max(0, (T - T_0) / T_s)',
  symbols: {
    k_T: { says: 'loss for each step of heat', unit: '' },
    T: { says: 'air temperature', unit: '°C' },
    T_0: { says: 'temperature from which it counts', unit: '°C' },
    T_s: { says: 'step of heat', unit: 'K' },
  },
  gives: { symbol: 'f_T', unit: '' },
  source: 'makers’ derating rules, common practice',
});

export const startRating = rule({
  name: 'startRating',
  says: 'While a motor starts a generator gives more than its rating for a moment; its rating must be the rest of it.',
  formula: '(S_c + P_s) / k_g',
  symbols: {
    S_c: { says: 'what the charger asks for', unit: 'W' },
    P_s: { says: 'what the loads ask for while the hardest one starts', unit: 'W' },
    k_g: { says: 'what a generator stands for a moment, as a multiple of its rating', unit: '' },
  },
  gives: { symbol: 'S_s', unit: 'W' },
  source: 'common practice',
});

export const ratingNeeded = rule({
  name: 'ratingNeeded',
  says: 'The rating on the plate must be higher by what height and heat take; the two multiply.',
  formula: 'S / (f_z * f_T)',
  symbols: {
    S: { says: 'power asked for', unit: 'W' },
    f_z: { says: 'share that the height leaves', unit: '' },
    f_T: { says: 'share that the heat leaves', unit: '' },
  },
  gives: { symbol: 'S_r', unit: 'W' },
  source: 'common practice',
});

export const continuousPower = rule({
  name: 'continuousPower',
  says: 'A generator’s name and plate mostly tell its maximum, for a moment; without a break it gives less.',
  formula: 'k_c * S_p',
  symbols: {
    k_c: { says: 'what it gives without a break, as a share of the figure it goes by', unit: '' },
    S_p: { says: 'the figure it goes by', unit: 'W' },
  },
  gives: { symbol: 'S', unit: 'W' },
  source: 'common practice; ISO 8528-1 tells continuous from limited-time ratings',
});

export const generatorCurrent = rule({
  name: 'generatorCurrent',
  says: 'A small generator limits its charger: this many amps are left for the battery.',
  formula: 'S * f_z * f_T * eta * pf / V',
  symbols: {
    S: { says: 'what the generator gives without a break', unit: 'W' },
    f_z: { says: 'share that the height leaves', unit: '' },
    f_T: { says: 'share that the heat leaves', unit: '' },
    eta: { says: 'efficiency of the charger', unit: '' },
    pf: { says: 'power factor', unit: '' },
    V: { says: 'charging voltage', unit: 'V' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});

export const soundAtDistance = rule({
  name: 'soundAtDistance',
  says: 'Twice as far away a sound is 6 dB weaker: a level means nothing without its distance.',
  formula: 'L_1 - 20 * log10(d_2 / d_1)',
  symbols: {
    L_1: { says: 'sound level at the first distance, dB', unit: '' },
    d_2: { says: 'second distance', unit: 'm' },
    d_1: { says: 'first distance', unit: 'm' },
  },
  gives: { symbol: 'L_2', unit: '' },
  source: 'sound in the open (physics)',
});
