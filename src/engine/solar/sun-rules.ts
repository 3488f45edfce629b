import { rule } from '#rule/rule.ts';

// Angles are in radians; sun energies in kWh/m² a day; a day T is 24 h.
const fao = 'Allen et al. (1998), FAO Irrigation and Drainage Paper 56';
const db = 'Duffie & Beckman, Solar Engineering of Thermal Processes';
const day = { says: 'day of the year, 1 January is 1', unit: '' };
const latitude = { says: 'latitude in radians, south negative', unit: '' };
const declinationAngle = { says: "sun's declination in radians", unit: '' };
const sunset = { says: 'sunset hour angle in radians', unit: '' };
const wholeDay = { says: 'length of a day and night', unit: 'h' };
const kWhM2 = 'kWh/m²';

export const inverseDistance = rule({
  name: 'inverseDistance',
  says: 'The earth is nearest to the sun in January, so the sun is a little stronger then.',
  formula: '1 + 0.033 * cos(2 * pi * J / 365)',
  symbols: { J: day },
  gives: { symbol: 'd_r', unit: '' },
  source: `${fao}, eq. 23`,
});

export const declination = rule({
  name: 'declination',
  says: 'How far north or south of the equator the sun stands overhead.',
  formula: '0.409 * sin(2 * pi * J / 365 - 1.39)',
  symbols: { J: day },
  gives: { symbol: 'delta', unit: '' },
  source: `${fao}, eq. 24`,
});

export const sunsetAngle = rule({
  name: 'sunsetAngle',
  says: 'How far the earth turns from noon to sunset.',
  formula: 'acos(max(-1, min(1, -tan(phi) * tan(delta))))',
  symbols: { phi: latitude, delta: declinationAngle },
  gives: { symbol: 'omega_s', unit: '' },
  source: `${fao}, eq. 25, held within its limits beyond the polar circles`,
});

export const daylight = rule({
  name: 'daylight',
  says: 'Hours from sunrise to sunset.',
  formula: 'T * omega_s / pi',
  symbols: { T: wholeDay, omega_s: sunset },
  gives: { symbol: 'N', unit: 'h' },
  source: `${fao}, eq. 34`,
});

export const outsideRadiation = rule({
  name: 'outsideRadiation',
  says: 'The sun that would fall on flat ground in a day if there were no air.',
  formula: 'T / pi * G_sc * d_r * (omega_s * sin(phi) * sin(delta) + cos(phi) * cos(delta) * sin(omega_s))',
  symbols: {
    T: wholeDay,
    G_sc: { says: 'solar constant, 0.0820 MJ/m² a minute', unit: 'kW/m²' },
    d_r: { says: 'strength of the sun for the day of the year', unit: '' },
    omega_s: sunset,
    phi: latitude,
    delta: declinationAngle,
  },
  tells: ['d_r'],
  gives: { symbol: 'H_0', unit: kWhM2 },
  source: `${fao}, eq. 21`,
});

export const groundRadiation = rule({
  name: 'groundRadiation',
  says: 'Sun on flat ground: the share of the outside sun that air and cloud let through.',
  formula: 'K_t * H_0',
  symbols: { K_t: { says: 'clearness', unit: '' }, H_0: { says: 'sun outside the air', unit: kWhM2 } },
  gives: { symbol: 'H', unit: kWhM2 },
  source: 'definition of the clearness index',
});

const clearness = { says: 'clearness of the month, 0.3 to 0.8', unit: '' };

export const diffuseShareWinter = rule({
  name: 'diffuseShareWinter',
  says: 'Share of the sun that comes from the whole sky, where days are short.',
  formula: '1.391 - 3.560 * K_t + 4.189 * K_t^2 - 2.137 * K_t^3',
  symbols: { K_t: clearness },
  gives: { symbol: 'D', unit: '' },
  source: `Erbs et al. (1982), in ${db}, sec. 2.12: sunset hour angle up to 81.4°`,
});

export const diffuseShareSummer = rule({
  name: 'diffuseShareSummer',
  says: 'Share of the sun that comes from the whole sky, where days are long.',
  formula: '1.311 - 3.022 * K_t + 3.427 * K_t^2 - 1.821 * K_t^3',
  symbols: { K_t: clearness },
  gives: { symbol: 'D', unit: '' },
  source: `Erbs et al. (1982), in ${db}, sec. 2.12: sunset hour angle above 81.4°`,
});

export const tiltBeamFactor = rule({
  name: 'tiltBeamFactor',
  says: 'How much more direct sun an angled panel catches than a flat one, over a day.',
  formula:
    '(cos(phi_T) * cos(delta) * sin(omega_T) + omega_T * sin(phi_T) * sin(delta)) / (cos(phi) * cos(delta) * sin(omega_s) + omega_s * sin(phi) * sin(delta))',
  symbols: {
    phi: latitude,
    phi_T: {
      says: 'latitude less the tilt north of the equator, plus the tilt south of it, radians',
      unit: '',
    },
    delta: declinationAngle,
    omega_s: sunset,
    omega_T: { says: 'sunset hour angle on the panel, radians', unit: '' },
  },
  tells: ['phi', 'delta'],
  gives: { symbol: 'R_b', unit: '' },
  source: `Liu & Jordan (1962), Klein (1977), in ${db}, sec. 2.19`,
});

export const tiltedPlaneRadiation = rule({
  name: 'tiltedPlaneRadiation',
  says: 'Sun on the angled panel: direct, from the sky, and thrown back by the ground.',
  formula: 'H * ((1 - D) * R_b + D * (1 + cos(beta)) / 2 + rho * (1 - cos(beta)) / 2)',
  symbols: {
    H: { says: 'sun on flat ground', unit: kWhM2 },
    D: { says: 'diffuse share', unit: '' },
    R_b: { says: 'gain of direct sun by the tilt', unit: '' },
    beta: { says: 'tilt in radians', unit: '' },
    rho: { says: 'what the ground reflects, 0.2 for grass', unit: '' },
  },
  gives: { symbol: 'H_T', unit: kWhM2 },
  source: `Liu & Jordan (1962), in ${db}, sec. 2.19`,
});

export const hourShare = rule({
  name: 'hourShare',
  says: "The share of a day's sun that falls in one hour.",
  formula:
    'pi / 24 * (a + b * cos(omega)) * (cos(omega) - cos(omega_s)) / (sin(omega_s) - omega_s * cos(omega_s))',
  symbols: {
    a: { says: '0.409 + 0.5016 sin(sunset angle − 60°)', unit: '' },
    b: { says: '0.6609 − 0.4767 sin(sunset angle − 60°)', unit: '' },
    omega: { says: "hour angle of the hour's middle, radians from noon", unit: '' },
    omega_s: sunset,
  },
  gives: { symbol: 'r', unit: '' },
  source: `Collares-Pereira & Rabl (1979), in ${db}, eq. 2.13.2`,
});
