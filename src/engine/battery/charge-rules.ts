import { rule } from '#rule/rule.ts';

const woodbridge = 'ampere-hour law (Woodbridge, 1935)';
const sandia = 'efficiency that falls towards full (Stevens & Corey, Sandia), in a straight line; integrated';
const efficiency = { says: 'share of the charge put in that stays', unit: '' };
const atFull = { says: 'the same at the very end', unit: '' };
const constant = { says: 'time constant of the battery', unit: 'h' };
const missingNow = { says: 'charge still missing', unit: 'Ah' };
const missingFirst = { says: 'charge missing at the start', unit: 'Ah' };
const missingLast = { says: 'charge missing at the end', unit: 'Ah' };
const missingTop = { says: 'charge missing where the losses grow', unit: 'Ah' };
const restVolts = { says: 'voltage at rest', unit: 'V' };
const absorption = { says: 'absorption voltage', unit: 'V' };
const inner = { says: 'resistance inside the battery', unit: 'Ω' };

export const chargeToPutIn = rule({
  name: 'chargeToPutIn',
  says: 'More has to go in than is missing, as a battery gives back a little less than it got.',
  formula: 'Q_m / eta_c',
  symbols: { Q_m: { says: 'charge missing', unit: 'Ah' }, eta_c: efficiency },
  gives: { symbol: 'Q_in', unit: 'Ah' },
  source: 'definition of the coulombic efficiency',
});

export const topChargeIn = rule({
  name: 'topChargeIn',
  says: 'Of the last part of a charge less and less stays, as it goes into gas and heat: so much has to go in.',
  formula:
    'm_t / (eta_c - eta_f) * log((eta_f + (eta_c - eta_f) * m_0 / m_t) / (eta_f + (eta_c - eta_f) * m_1 / m_t))',
  symbols: { m_t: missingTop, eta_c: efficiency, eta_f: atFull, m_0: missingFirst, m_1: missingLast },
  tells: ['m_0', 'm_1'],
  gives: { symbol: 'Q_top', unit: 'Ah' },
  source: sandia,
});

export const allChargeIn = rule({
  name: 'allChargeIn',
  says: 'Both parts together have to go in.',
  formula: 'Q_in + Q_top',
  symbols: {
    Q_in: { says: 'charge for the first part', unit: 'Ah' },
    Q_top: { says: 'charge for the last part', unit: 'Ah' },
  },
  gives: { symbol: 'Q_all', unit: 'Ah' },
  source: 'definition',
});

export const missingInTop = rule({
  name: 'missingInTop',
  says: 'What is still missing after some charge of the last part has gone in.',
  formula:
    'm_t / (eta_c - eta_f) * ((eta_f + (eta_c - eta_f) * m_0 / m_t) * exp(-((eta_c - eta_f) * Q_in / m_t)) - eta_f)',
  symbols: {
    m_t: missingTop,
    eta_c: efficiency,
    eta_f: atFull,
    m_0: missingFirst,
    Q_in: { says: 'charge put in', unit: 'Ah' },
  },
  gives: { symbol: 'm', unit: 'Ah' },
  source: sandia,
});

export const chargingCurrent = rule({
  name: 'chargingCurrent',
  says: 'The current into a battery is the least of what the source gives, what its kind can take, and what it still accepts.',
  formula: 'min(I_s, I_c, m / tau)',
  symbols: {
    I_s: { says: 'what the source gives', unit: 'A' },
    I_c: { says: 'what its kind of battery can take', unit: 'A' },
    m: missingNow,
    tau: constant,
  },
  tells: ['I_s', 'I_c'],
  gives: { symbol: 'I', unit: 'A' },
  source: woodbridge,
});

export const kneeMissing = rule({
  name: 'kneeMissing',
  says: 'What is still missing when the battery begins to take less than it is offered.',
  formula: 'min(m_0, max(m_e, I * tau))',
  symbols: {
    m_0: missingFirst,
    m_e: missingLast,
    I: { says: 'charging current', unit: 'A' },
    tau: constant,
  },
  tells: ['m_0', 'I'],
  gives: { symbol: 'm_k', unit: 'Ah' },
  source: woodbridge,
});

export const steadyTime = rule({
  name: 'steadyTime',
  says: 'Below the slow last part, the time is what has to go in divided by the current.',
  formula: 'Q_in / I',
  symbols: {
    Q_in: { says: 'charge to put in', unit: 'Ah' },
    I: { says: 'charging current', unit: 'A' },
  },
  gives: { symbol: 't_1', unit: 'h' },
  source: 'definition',
});

export const tailTime = rule({
  name: 'tailTime',
  says: 'From there on the current falls with what is missing, so the last part is slow.',
  formula: 'tau / eta_c * log(m_k / m_e)',
  symbols: {
    tau: constant,
    eta_c: efficiency,
    m_k: { says: 'charge missing where it begins to take less', unit: 'Ah' },
    m_e: missingLast,
  },
  tells: ['m_k', 'm_e'],
  gives: { symbol: 't_2', unit: 'h' },
  source: `${woodbridge}, solved for the time`,
});

export const topTailTime = rule({
  name: 'topTailTime',
  says: 'Near full the current falls and less of it stays: the last few per cent take longest.',
  formula:
    'tau / eta_f * log(m_0 * (eta_f + (eta_c - eta_f) * m_1 / m_t) / (m_1 * (eta_f + (eta_c - eta_f) * m_0 / m_t)))',
  symbols: {
    tau: constant,
    eta_f: atFull,
    m_0: missingFirst,
    eta_c: efficiency,
    m_1: missingLast,
    m_t: missingTop,
  },
  tells: ['m_0', 'm_1'],
  gives: { symbol: 't_3', unit: 'h' },
  source: `${woodbridge}, with an ${sandia}`,
});

export const fillTime = rule({
  name: 'fillTime',
  says: 'The parts make the time to charge.',
  formula: 't_1 + t_2 + t_3',
  symbols: {
    t_1: { says: 'time at the full current', unit: 'h' },
    t_2: { says: 'time with the current falling', unit: 'h' },
    t_3: { says: 'the same near full', unit: 'h' },
  },
  gives: { symbol: 't', unit: 'h' },
  source: 'definition',
});

export const missingInTail = rule({
  name: 'missingInTail',
  says: 'What is missing dies away while the current falls.',
  formula: 'm_k * exp(-(eta_c * t / tau))',
  symbols: {
    m_k: { says: 'charge missing where it begins to take less', unit: 'Ah' },
    eta_c: efficiency,
    t: { says: 'time since then', unit: 'h' },
    tau: constant,
  },
  gives: { symbol: 'm', unit: 'Ah' },
  source: woodbridge,
});

export const missingInTopTail = rule({
  name: 'missingInTopTail',
  says: 'Near full what is missing dies away more slowly, as less of the current stays.',
  formula:
    'm_0 * eta_f / ((eta_f + (eta_c - eta_f) * m_0 / m_t) * exp(eta_f * t / tau) - (eta_c - eta_f) * m_0 / m_t)',
  symbols: {
    m_0: missingFirst,
    eta_f: atFull,
    eta_c: efficiency,
    m_t: missingTop,
    t: { says: 'time since then', unit: 'h' },
    tau: constant,
  },
  gives: { symbol: 'm', unit: 'Ah' },
  source: `${woodbridge}, with an ${sandia}`,
});

export const coldTimeConstant = rule({
  name: 'coldTimeConstant',
  says: 'A cold battery takes its charge more slowly, and so does an old one.',
  formula: 'tau / k_age * 2^max(0, (T_25 - T) / T_20)',
  symbols: {
    tau: { says: 'time constant at 25 °C', unit: 'h' },
    k_age: { says: 'what is left of the label at this age', unit: '' },
    T_25: { says: '25 °C', unit: '°C' },
    T: { says: 'battery temperature', unit: '°C' },
    T_20: { says: 'kelvin that halve it', unit: 'K' },
  },
  gives: { symbol: 'tau_T', unit: 'h' },
  source: 'charge acceptance in the cold, handbooks, from memory',
});

export const chargingSlope = rule({
  name: 'chargingSlope',
  says: 'A battery lifts its voltage with the current, the more the nearer that is to all it accepts.',
  formula: 'R_i + (V_a - V_rest) * tau / m',
  symbols: { R_i: inner, V_a: absorption, V_rest: restVolts, tau: constant, m: missingNow },
  gives: { symbol: 'k_V', unit: 'V/A' },
  source: `${woodbridge}: at the current that it just accepts it stands at absorption; resistance on top`,
});

export const chargingVolts = rule({
  name: 'chargingVolts',
  says: 'While it charges a battery stands above its resting voltage, up to absorption.',
  formula: 'min(V_a, V_rest + I * k_V)',
  symbols: {
    V_a: absorption,
    V_rest: restVolts,
    I: { says: 'charging current', unit: 'A' },
    k_V: { says: 'rise with the current', unit: 'V/A' },
  },
  gives: { symbol: 'V_c', unit: 'V' },
  source: "physics: Ohm's law",
});

export const currentOfSources = rule({
  name: 'currentOfSources',
  says: 'Watts become amps at the volts that the battery stands at while it takes them; amps of a charger come on top.',
  formula: '2 * (I_s * V_rest + P) / (V_rest - I_s * k_V + sqrt((V_rest + I_s * k_V)^2 + 4 * k_V * P))',
  symbols: {
    I_s: { says: 'amps offered as amps', unit: 'A' },
    V_rest: restVolts,
    P: { says: 'watts offered', unit: 'W' },
    k_V: { says: 'rise of the voltage with the current', unit: 'V/A' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'power = voltage × current, solved for the current',
});

export const roundTripEnergy = rule({
  name: 'roundTripEnergy',
  says: 'Of the energy put in comes back what stays of the charge, at the lower volts of giving it.',
  formula: 'eta_c * V_out / V_in',
  symbols: {
    eta_c: { says: 'share of the charge put in that stays, over the whole charge', unit: '' },
    V_out: { says: 'mean voltage while it gives', unit: 'V' },
    V_in: { says: 'mean voltage while it charges', unit: 'V' },
  },
  gives: { symbol: 'eta_E', unit: '' },
  source: 'definition of the energy efficiency',
});

export const voltageAtTemperature = rule({
  name: 'voltageAtTemperature',
  says: 'A cold lead-acid battery wants a higher charging voltage, a warm one a lower.',
  formula: 'V_25 + k_V * (T - T_25)',
  symbols: {
    V_25: { says: 'charging voltage at 25 °C', unit: 'V' },
    k_V: { says: 'change with temperature', unit: 'V/K' },
    T: { says: 'battery temperature', unit: '°C' },
    T_25: { says: '25 °C', unit: '°C' },
  },
  gives: { symbol: 'V_T', unit: 'V' },
  source: 'makers’ sheets that agree, common practice',
});
