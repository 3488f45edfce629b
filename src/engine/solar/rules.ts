import { rule } from '#rule/rule.ts';

const sunHours = { says: 'peak sun hours in the plane of the panel', unit: 'h' };

export const peakSunHoursOf = rule({
  name: 'peakSunHours',
  says: 'Hours of full sun (1 kW/m²) that would bring the same energy as the whole day.',
  formula: 'H_T / G_0',
  symbols: {
    H_T: { says: 'sun on the panel in a day', unit: 'kWh/m²' },
    G_0: { says: 'full sun', unit: 'kW/m²' },
  },
  gives: { symbol: 'H', unit: 'h' },
  source: 'definition',
});

export const overcastSunHours = rule({
  name: 'overcastSunHours',
  says: 'Peak sun hours left under full cloud.',
  formula: 'H * k_cloud',
  symbols: { H: sunHours, k_cloud: { says: 'share that full cloud lets through', unit: '' } },
  gives: { symbol: 'H_cloud', unit: 'h' },
  source: 'common practice',
});

export const sunWhileItShines = rule({
  name: 'sunWhileItShines',
  says: 'The typical strength of the sun while the energy comes in: a half sine over the day, weighted by itself.',
  formula: 'pi^2 / 8 * G_0 * H / N',
  symbols: {
    G_0: { says: 'full sun', unit: 'kW/m²' },
    H: sunHours,
    N: { says: 'hours of daylight', unit: 'h' },
  },
  tells: ['H', 'N'],
  gives: { symbol: 'G', unit: 'kW/m²' },
  source: 'definition, for a day shaped like a half sine',
});

export const cellTemperature = rule({
  name: 'cellTemperature',
  says: 'A panel in the sun is hotter than the air, the more so the less air gets behind it.',
  formula: 'T_a + k * G',
  symbols: {
    T_a: { says: 'air temperature by day', unit: '°C' },
    k: { says: 'heating in full sun for the way it is mounted', unit: 'K·m²/kW' },
    G: { says: 'strength of the sun', unit: 'kW/m²' },
  },
  gives: { symbol: 'T_c', unit: '°C' },
  source: 'Ross (1976); mounts by Skoplaki & Palyvos (2009)',
});

export const temperatureFactor = rule({
  name: 'temperatureFactor',
  says: 'A hot panel makes less: about 0.4 % a degree above 25 °C.',
  formula: '1 + gamma * (T_c - T_0)',
  symbols: {
    gamma: { says: 'change of power with temperature', unit: '1/K' },
    T_c: { says: 'cell temperature', unit: '°C' },
    T_0: { says: 'temperature of the rating, 25 °C', unit: '°C' },
  },
  gives: { symbol: 'f_T', unit: '' },
  source: 'Dobos (2014), PVWatts Version 5 Manual, eq. 8',
});

const loss = (says: string) => ({ says, unit: '' });

export const panelLosses = rule({
  name: 'panelLosses',
  says: 'What is left after dirt, wiring, mismatch and glancing light: the losses multiply, they do not add.',
  formula: '(1 - L_dirt) * (1 - L_wire) * (1 - L_mismatch) * (1 - L_reflection)',
  symbols: {
    L_dirt: loss('loss by dust and dirt'),
    L_wire: loss('loss in cables and connectors'),
    L_mismatch: loss('loss by mismatch, ageing and rating tolerance'),
    L_reflection: loss('loss by glancing and weak light'),
  },
  gives: { symbol: 'f_L', unit: '' },
  source: 'Dobos (2014), PVWatts Version 5 Manual, sec. 8',
});

export const mpptFactor = rule({
  name: 'mpptFactor',
  says: "Share of the panel's rating that an MPPT controller brings to the battery.",
  formula: 'f_T * f_L * k_shade * eta',
  symbols: {
    f_T: { says: 'heat of the panel', unit: '' },
    f_L: { says: 'dirt, wiring, mismatch and reflection', unit: '' },
    k_shade: { says: 'share that shade leaves', unit: '' },
    eta: { says: 'efficiency of the controller', unit: '' },
  },
  gives: { symbol: 'f', unit: '' },
  source: 'definition',
});

export const pwmFactor = rule({
  name: 'pwmFactor',
  says: "A PWM controller passes the panel's current at the battery's voltage, so the surplus voltage is lost; what the hot panel gives at its best is the most.",
  formula: 'min(V_bat / V_mp, f_T * eta) * f_L * k_shade',
  symbols: {
    V_bat: { says: 'battery voltage while charging', unit: 'V' },
    V_mp: { says: "panels' rated voltage at full power, of a string", unit: 'V' },
    f_T: { says: 'heat of the panel', unit: '' },
    eta: { says: 'efficiency of the controller', unit: '' },
    f_L: { says: 'dirt, wiring, mismatch and reflection', unit: '' },
    k_shade: { says: 'share that shade leaves', unit: '' },
  },
  gives: { symbol: 'f', unit: '' },
  source: 'common practice',
});

export const dailyYieldEnergy = rule({
  name: 'dailyYieldEnergy',
  says: 'Energy into the battery on a day.',
  formula: 'P * H * f',
  symbols: {
    P: { says: "panel's rating", unit: 'W' },
    H: sunHours,
    f: { says: 'share that arrives', unit: '' },
  },
  gives: { symbol: 'E', unit: 'Wh' },
  source: 'definition',
});

export const dailyYieldCharge = rule({
  name: 'dailyYieldCharge',
  says: 'The same as charge at the battery.',
  formula: 'E / V',
  symbols: {
    E: { says: 'energy a day', unit: 'Wh' },
    V: { says: "battery's voltage while it charges", unit: 'V' },
  },
  gives: { symbol: 'Q', unit: 'Ah' },
  source: 'definition',
});

export const panelPower = rule({
  name: 'panelPower',
  says: "Panel rating that puts a day's use back into the battery on an average day.",
  formula: 'Q * V / (H * f * eta_c)',
  symbols: {
    Q: { says: "a day's use", unit: 'Ah' },
    V: { says: "battery's voltage while it charges", unit: 'V' },
    H: sunHours,
    f: { says: 'share of the rating that arrives', unit: '' },
    eta_c: { says: 'share of the charge that the battery gives back', unit: '' },
  },
  gives: { symbol: 'P', unit: 'W' },
  source: 'definition',
});

export const storedCharge = rule({
  name: 'storedCharge',
  says: 'Panels charge at more than the nominal voltage, and not all of the charge stays.',
  formula: 'Q * V_0 / V * eta_c',
  symbols: {
    Q: { says: 'yield a day, at the nominal voltage', unit: 'Ah' },
    V_0: { says: 'nominal voltage', unit: 'V' },
    V: { says: 'voltage that it flows at', unit: 'V' },
    eta_c: { says: 'share of the charge put in that stays', unit: '' },
  },
  gives: { symbol: 'Q_s', unit: 'Ah' },
  source: 'energy in = charge × voltage; the coulombic efficiency',
});
