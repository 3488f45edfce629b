import { rule } from '#rule/rule.ts';

export const dailyCharge = rule({
  name: 'dailyCharge',
  says: 'What a thing takes a day is how many there are, times its amps, times the share of the time it runs, times the hours it is on.',
  formula: 'n * I * d * t',
  symbols: {
    n: { says: 'how many', unit: '' },
    I: { says: 'current while running', unit: 'A' },
    d: { says: 'share of the time it runs', unit: '' },
    t: { says: 'hours on a day', unit: 'h' },
  },
  gives: { symbol: 'Q', unit: 'Ah' },
  source: 'definition',
});

export const currentOfPower = rule({
  name: 'currentOfPower',
  says: 'Watts divided by volts are amps.',
  formula: 'P / V',
  symbols: { P: { says: 'power', unit: 'W' }, V: { says: 'nominal voltage', unit: 'V' } },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});

export const dailyEnergy = rule({
  name: 'dailyEnergy',
  says: 'Amp hours times volts are watt hours.',
  formula: 'Q * V',
  symbols: { Q: { says: 'charge', unit: 'Ah' }, V: { says: 'nominal voltage', unit: 'V' } },
  gives: { symbol: 'E', unit: 'Wh' },
  source: 'definition',
});

export const averageCurrent = rule({
  name: 'averageCurrent',
  says: 'A day’s use spread over 24 hours is the average current.',
  formula: 'Q / t_day',
  symbols: { Q: { says: 'use a day', unit: 'Ah' }, t_day: { says: 'hours of a day', unit: 'h' } },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});

export const currentOverHours = rule({
  name: 'currentOverHours',
  says: 'What was drawn in the hours from now on, divided by their number, is the average current.',
  formula: 'Q / t',
  symbols: { Q: { says: 'use in these hours', unit: 'Ah' }, t: { says: 'hours', unit: 'h' } },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});

export const powerOfCurrent = rule({
  name: 'powerOfCurrent',
  says: 'Amps times volts are watts.',
  formula: 'I * V',
  symbols: { I: { says: 'current', unit: 'A' }, V: { says: 'voltage', unit: 'V' } },
  gives: { symbol: 'P', unit: 'W' },
  source: 'definition',
});

export const applianceInput = rule({
  name: 'applianceInput',
  says: 'A microwave’s plate shows what it cooks with; it takes about half as much again from the socket.',
  formula: 'P_out * f',
  symbols: {
    P_out: { says: 'power on the plate', unit: 'W' },
    f: { says: 'input for each watt of output', unit: '' },
  },
  gives: { symbol: 'P', unit: 'W' },
  source: 'measured microwaves: 700 W out take 1,100 W, 1,000 W out 1,500–1,600 W',
});

export const chargeOverTime = rule({
  name: 'chargeOverTime',
  says: 'What is used over some days is a day’s use times the days.',
  formula: 'Q * t / t_day',
  symbols: {
    Q: { says: 'use a day', unit: 'Ah' },
    t: { says: 'how long', unit: 'h' },
    t_day: { says: 'hours of a day', unit: 'h' },
  },
  gives: { symbol: 'Q_t', unit: 'Ah' },
  source: 'definition',
});

const time = { says: 'hours', unit: 'h' };

export const energyOfPower = rule({
  name: 'energyOfPower',
  says: 'Watts times hours are watt hours.',
  formula: 'P * t',
  symbols: { P: { says: 'power', unit: 'W' }, t: time },
  gives: { symbol: 'E', unit: 'Wh' },
  source: 'definition',
});

export const powerOfEnergy = rule({
  name: 'powerOfEnergy',
  says: 'Watt hours divided by hours are watts.',
  formula: 'E / t',
  symbols: { E: { says: 'energy', unit: 'Wh' }, t: time },
  gives: { symbol: 'P', unit: 'W' },
  source: 'definition',
});

export const currentOfCharge = rule({
  name: 'currentOfCharge',
  says: 'Amp hours divided by hours are amps.',
  formula: 'Q / t',
  symbols: { Q: { says: 'charge', unit: 'Ah' }, t: time },
  gives: { symbol: 'I', unit: 'A' },
  source: 'definition',
});
