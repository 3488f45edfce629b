import { describe, expect, test } from 'vitest';
import { isDenied } from '#intents/denied.ts';
import { factsOf } from '#intents/facts.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { ask } from './ask.ts';

const first = (say: string): string => ask({ say }).text;

describe('a row that told figures speak against is not told', () => {
  test.each([
    [
      'regulator reads 18.1 volts on the panel terminals, is that what the battery gets?',
      /^No: those are the panel/,
    ],
    [
      'controller shows panel 20V and 6 amps, is that going into my battery',
      /^No, more: 20 V × 6 A is 120 W, about 8.4 A at 13.6 V/,
    ],
    [
      'the mppt app shows 62V at 5A panel and 27V battery, how many amps go in',
      /^No, more: .* is 310 W, about 11 A at 27 V/,
    ],
    [
      'controller reads 17.5V 6A from the panel, is that what’s going in the battery? its a pwm',
      /^About that: a PWM passes/,
    ],
    [
      'my controller says battery 12.3V but no amps in full sun',
      /^Volts but no amps: the way from controller/,
    ],
    ['panel shows 21V but nothing going into the battery, battery is at 12.1V', /the battery isn’t full/],
    ['the shunt shows 0.4A going out with everything off, whats drawing', /^Something small still draws/],
    ['fridge cuts out, it reads 12.7V at its plug while running', /^Its own cut-out is set too high/],
    ['heater wont start, 12.4V at its plug while it glows', /^Fuel or air/],
    ['kettle 700w trips the site breaker', /^Something leaks to earth/],
    ['lights brighter with the engine running, 15.6V, is that normal?', /^Too high: 15.6 V/],
    ['heater still draws 10A after an hour, normal?', /^No: after the first minutes/],
    ['my parked car draws 30 milliamps, is that too much', /^Fine: 30 mA/],
    ['fell to 3.2 volts, did I kill my agm', /^Perhaps: at 3.2 V a cell may be dead/],
  ])('%s', (say, says) => expect(first(say)).toMatch(says));
});

describe('volts while something charges', () => {
  test.each([
    ['Is the meter broken? shows 14.4V with the engine off, sun is up', /^All fine: 14.4 V is absorption/],
    ['13.8v on the battery while plugged into mains, is something wrong', /^All fine: 13.8 V is float/],
    ['28.4V on my 24V bank on charge, is that right?', /^All fine: 28.4 V is absorption.* 27 V/],
    ['gel battery 14.8 on the charger, bad?', /^Too high for gel/],
    [
      'battery reads 14.4V at night with nothing charging, is my meter stuffed',
      /^Not right: no battery holds 14.4 V/,
    ],
  ])('%s', (say, says) => expect(first(say)).toMatch(says));
});

describe('what denies a row', () => {
  const told = (text: string) => recognise(text).mentions;
  test.each([
    [{ voltsFrom: 13 }, { volts: 13.2 }, '', true],
    [{ voltsFrom: 13 }, { volts: 12.4 }, '', false],
    [{ voltsFrom: 13 }, {}, '', false],
    [{ voltsFrom: 13 }, { volts: 19.8 }, '', false],
    [{ voltsFrom: 12, taken: 'load' }, { volts: 12.4, voltsTaken: 'rest' }, '', false],
    [{ ampsUnder: 0.8 }, {}, '0.4A with all off', true],
    [{ ampsUnder: 0.8 }, {}, 'with all off', false],
    [{ percentUnder: 90 }, { batteries: [{ stateOfChargePercent: 60 }] }, '', true],
    [{ mainsUnderW: 1000 }, { loads: [{ name: 'kettle', powerW: 700, supply: 'ac' }] }, '', true],
    [{ mainsUnderW: 1000 }, { loads: [{ name: 'kettle', supply: 'ac' }] }, '', false],
    [{ hotFromC: 46 }, {}, 'warm at 55 degrees C', true],
    [{ hoursFrom: 1 }, {}, 'takes 2 hours', true],
    [{ hasPanelVolts: true }, {}, 'panel 19.8V 5A', true],
    [{ hasPanelVolts: true }, {}, 'panel 13.2V, battery 13.1V', false],
    [{}, { volts: 13 }, '3A for 2 hours', false],
  ] as const)('%j, %j, “%s”: %s', (denied, facts, text, is) =>
    expect(isDenied(denied, factsOf(facts as never), told(text))).toBe(is),
  );

  test('in a system of 24 V the volts are of two blocks', () =>
    expect(isDenied({ voltsFrom: 13 }, factsOf({ volts: 25 }), [], 2)).toBe(false));
});
