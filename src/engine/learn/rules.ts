import { rule } from '#rule/rule.ts';

export const levelAfter = rule({
  name: 'levelAfter',
  says: 'What is missing grows by what was drawn and shrinks by what the sun put back, as shares of what the battery really holds.',
  formula: 'q + (k_u * U - k_s * S) / (k_c * C)',
  symbols: {
    q: { says: 'share of the charge missing before', unit: '' },
    k_u: { says: 'real draw against what was told', unit: '' },
    U: { says: 'use as told', unit: 'Ah' },
    k_s: { says: 'real sun against what was reckoned', unit: '' },
    S: { says: 'sun as reckoned', unit: 'Ah' },
    k_c: { says: 'real capacity against the label', unit: '' },
    C: { says: 'capacity on the label', unit: 'Ah' },
  },
  gives: { symbol: 'q_2', unit: '' },
  source: 'definition',
});

export const learnedUse = rule({
  name: 'learnedUse',
  says: 'What it really takes a day is what was told, by the factor that the readings show.',
  formula: 'k_u * Q',
  symbols: {
    k_u: { says: 'real draw against what was told', unit: '' },
    Q: { says: 'use a day as told', unit: 'Ah' },
  },
  gives: { symbol: 'Q_day', unit: 'Ah' },
  source: 'definition',
});

export const learnedYield = rule({
  name: 'learnedYield',
  says: 'What the panel really makes a day is what was reckoned, by the factor that the readings show.',
  formula: 'k_s * E',
  symbols: {
    k_s: { says: 'real sun against what was reckoned', unit: '' },
    E: { says: 'energy of a day as reckoned', unit: 'Wh' },
  },
  gives: { symbol: 'E_day', unit: 'Wh' },
  source: 'definition',
});

export const readingWeight = rule({
  name: 'readingWeight',
  says: 'A reading counts by how unsure the estimate was against how rough the reading is.',
  formula: 'P / (P + R)',
  symbols: {
    P: { says: 'variance of what was expected', unit: '' },
    R: { says: 'variance of the reading', unit: '' },
  },
  gives: { symbol: 'w', unit: '' },
  source: 'common practice: the Kalman filter for one number',
});

export const surprise = rule({
  name: 'surprise',
  says: 'How odd a reading is: its distance from what was expected, in standard deviations.',
  formula: 'abs(z - h) / sqrt(P + R)',
  symbols: {
    z: { says: 'what was read', unit: '' },
    h: { says: 'what was expected', unit: '' },
    P: { says: 'variance of what was expected', unit: '' },
    R: { says: 'variance of the reading', unit: '' },
  },
  gives: { symbol: 'd', unit: '' },
  source: 'common practice: the innovation test of a Kalman filter',
});
