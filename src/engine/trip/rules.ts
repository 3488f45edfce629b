import { rule } from '#rule/rule.ts';

const charge = (says: string) => ({ says, unit: 'Ah' });

export const chargeAfterHour = rule({
  name: 'chargeAfterHour',
  says: 'What the battery holds after an hour is what it held, plus what stayed of the charge put in, minus what was taken out.',
  formula: 'q + Q_stay - Q_out',
  symbols: {
    q: charge('charge before'),
    Q_stay: charge('what stayed of the charge put in'),
    Q_out: charge('charge taken out'),
  },
  gives: { symbol: 'q_next', unit: 'Ah' },
  source: 'definition: the battery as an account of amp hours',
});

export const chargeLevel = rule({
  name: 'chargeLevel',
  says: 'How full the battery is, as a share of what it can hold.',
  formula: '100 * q / C_real',
  symbols: {
    q: charge('charge in the battery'),
    C_real: charge('what the battery really holds at this current, temperature and age'),
  },
  gives: { symbol: 'SoC', unit: '%' },
  source: 'definition',
});

export const chargeAtPoint = rule({
  name: 'chargeAtPoint',
  says: 'Hour by hour: the charge at a point of the trip is what it started with, less all that was taken out, plus all that was put in and stayed.',
  formula: 'q_0 - Q_out + Q_in',
  symbols: {
    q_0: charge('charge at the start'),
    Q_out: charge('sum of what was taken out, hour by hour'),
    Q_in: charge('sum of what was put in and stayed, hour by hour'),
  },
  gives: { symbol: 'q', unit: 'Ah' },
  source: 'definition: the battery as an account of amp hours',
});

export const levelLater = rule({
  name: 'levelLater',
  says: 'How full it will be: what is in it now, plus what goes in, less what goes out, as a share of what it holds; between empty and full.',
  formula: 'max(0, min(1, s + (Q_in - Q_out) / C))',
  symbols: {
    s: { says: 'state of charge now', unit: '' },
    Q_in: { says: 'charge that goes in until then', unit: 'Ah' },
    Q_out: { says: 'charge used until then', unit: 'Ah' },
    C: { says: 'what the battery holds', unit: 'Ah' },
  },
  gives: { symbol: 's_2', unit: '' },
  source: 'definition',
});
