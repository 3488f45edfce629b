import { rule } from '#rule/rule.ts';

/** Part-load efficiency: Dobos, PVWatts Version 5 Manual, NREL/TP-6A20-62641 (2014), equation 11. */
export const partLoadEfficiency = rule({
  name: 'partLoadEfficiency',
  says: 'An inverter wastes a larger share of a small load than of a big one.',
  formula: 'eta_n / 0.9637 * (-0.0162 * z - 0.0059 / z + 0.9858)',
  symbols: {
    eta_n: { says: 'efficiency at its rating', unit: '' },
    z: { says: 'load as a share of the rating', unit: '' },
  },
  gives: { symbol: 'eta', unit: '' },
  source: 'PVWatts Version 5 Manual, NREL/TP-6A20-62641 (2014)',
});

export const smallLoadEfficiency = rule({
  name: 'smallLoadEfficiency',
  says: 'On next to nothing an inverter takes its idle draw and little on top: most of it is wasted.',
  formula: 'z / (p + (z_s / eta_s - p) * z / z_s)',
  symbols: {
    z: { says: 'load as a share of the rating', unit: '' },
    p: { says: 'idle draw as a share of the rating', unit: '' },
    z_s: { says: 'share from which the curve of part load holds', unit: '' },
    eta_s: { says: 'efficiency there', unit: '' },
  },
  gives: { symbol: 'eta', unit: '' },
  source: 'physics: a straight line between the idle draw and the input at the lowest load measured',
});

export const inverterInput = rule({
  name: 'inverterInput',
  says: 'What the inverter takes from the battery is what it gives, divided by its efficiency.',
  formula: 'P / eta',
  symbols: {
    P: { says: 'mains load', unit: 'W' },
    eta: { says: 'efficiency at this load', unit: '' },
  },
  gives: { symbol: 'P_dc', unit: 'W' },
  source: 'definition',
});

export const batteryCurrent = rule({
  name: 'batteryCurrent',
  says: 'Amps from the battery: what the inverter takes, divided by the battery’s volts under load.',
  formula: 'P / (eta * V)',
  symbols: {
    P: { says: 'mains load', unit: 'W' },
    eta: { says: 'efficiency at this load', unit: '' },
    V: { says: 'battery voltage under load', unit: 'V' },
  },
  gives: { symbol: 'I', unit: 'A' },
  source: 'power in = power out ÷ efficiency (physics)',
});

export const startingPower = rule({
  name: 'startingPower',
  says: 'When the biggest motor starts, it asks for several times its running power on top of the rest.',
  formula: 'P + (k_s - 1) * P_m',
  symbols: {
    P: { says: 'all loads while they run', unit: 'W' },
    k_s: { says: 'starting power as a multiple of the running power', unit: '' },
    P_m: { says: 'the biggest motor while it runs', unit: 'W' },
  },
  gives: { symbol: 'P_s', unit: 'W' },
  source: 'common practice; NEMA MG 1 code letters give 5 to 8 times for motors across the line',
});

export const chargeUsed = rule({
  name: 'chargeUsed',
  says: 'Amps times hours are amp hours.',
  formula: 'I * t',
  symbols: { I: { says: 'battery current', unit: 'A' }, t: { says: 'time it runs', unit: 'h' } },
  gives: { symbol: 'Q', unit: 'Ah' },
  source: 'definition',
});

export const idleUse = rule({
  name: 'idleUse',
  says: 'An inverter left on takes its idle draw all day long.',
  formula: 'P_0 * t / V',
  symbols: {
    P_0: { says: 'idle draw', unit: 'W' },
    t: { says: 'time it is on', unit: 'h' },
    V: { says: 'nominal voltage', unit: 'V' },
  },
  gives: { symbol: 'Q_0', unit: 'Ah' },
  source: 'definition',
});
