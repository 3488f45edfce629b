import { describe, expect, test } from 'vitest';
import { ask } from './ask.ts';

const told = (say: string): string => ask({ say }).text;

/** Each asks one thing; what it asked stands in the first line. */
const first = (rows: readonly (readonly [say: string, line: RegExp])[]): void => {
  test.each(rows)('%s', (say, line) => expect(told(say)).toMatch(line));
};

describe('volts to charge at, by kind', () => {
  first([
    [
      'what’s the bulk and float for lifepo4',
      /^Lithium \(LiFePO4\): 14\.4 V in bulk and absorption \(14 to 14\.6 V\), no float/,
    ],
    ['what do I set bulk and float to for my 100ah agm', /^AGM: 14\.4 V .*float at 13\.5 V/],
    ['bulk float gel whats right', /^Gel: 14\.2 V .*float at 13\.4 V/],
    ['what bulk and float volts on a 24V agm', /^AGM: 28\.8 V .*float at 27 V/],
    ['what should bulk and float be set to', /^Lithium[^\n]*\nAGM[^\n]*\nGel[^\n]*\nWet/],
    ['bulk, absorption and float - what are they', /^Bulk is/],
  ]);
});

describe('a part and its rating', () => {
  first([
    [
      'Anderson plug is rated 50 amp, can I pull 60 through it for ten minutes?',
      /^No: 60 A is 10 A more than the 50 A/,
    ],
    ['cig socket is rated 10 amps, can i run a 15A load off it', /^No: 15 A is 5 A more/],
    [
      'my switch is rated 20A and the load is 25A, ok?',
      /^No: 25 A is 5 A more[^\n]*\nFit one rated 32 A or more/,
    ],
    ['can i run 30A through a 20 amp switch', /^No: 30 A/],
    ['50A anderson and a 45A load, thats fine isnt it', /^Yes, just: 45 A .* 10 % to spare/],
    ['is a grey anderson plug ok for 50 amps continuous', /^Yes, just: .* with nothing to spare/],
    ['50A anderson plug on 6 B&S, what fuse for 40A', /^A 50 A fuse/],
  ]);
});

describe('auto cable’s mm', () => {
  first([
    [
      '10mm auto cable is 10mm² right?',
      /^No, look on the reel: 10 mm auto cable is 10 mm over its insulation/,
    ],
    ['so what is 6mm auto cable really', /^About 4\.6 mm² of copper/],
    ['is 6mm auto cable the same as 6mm2', /^No: about 4\.6 mm²/],
    ['4mm auto is about 2mm² yeah?', /^Yes, near enough: about 1\.8 mm²/],
    ['is 6mm auto cable ok for 20A over 3m', /^Yes: 6 mm auto cable loses/],
  ]);
});

describe('what is left and what is gone', () => {
  first([
    ['so if its 70% dod whats the soc', /^30 % SoC: 70 % is gone, 30 % is left\./],
    ['whats the dod at 45% soc', /^55 % DoD: 45 % is left/],
    ['soc is 35% so dod is?', /^65 % DoD/],
    ['100ah agm at 70% dod, what soc is that', /^30 % SoC: .* 30 Ah left/],
  ]);
});

describe('what it is, and who needs one', () => {
  first([
    [
      'what does mppt mean and do i need it',
      /^An MPPT controller runs[^\n]*\nFor one small 12 V panel a PWM does/,
    ],
    ['what does mppt mean and do i need it', /short for maximum power point tracking/],
    ['what is a bms and do i need one', /^A BMS [^\n]*\nLithium must have one/],
    ['what is an isolator, and do I need one?', /^An isolator [^\n]*\nOnly with a second battery/],
    ['what does pwm stand for', /PWM is short for pulse width modulation/],
  ]);
});

describe('a laptop without an inverter', () => {
  first([
    [
      'can i charge my laptop off the van without an inverter? its a 65w usb c one',
      /^No inverter needed: a 12 V USB-C \(PD\) adapter of 65 W or more[^\n]*\nIt takes about 6 A/,
    ],
    ['do i need an inverter for a laptop', /^No inverter needed: .*often 65 W/],
  ]);
});

describe('is the charge done', () => {
  first([
    [
      'Absorbing at 14.4 V, tail current down to 2 A on a 100 Ah AGM. Full, or give it longer?',
      /^Full: 2 A into 100 Ah is 2 %/,
    ],
    ['14.4V and 4A into a 100Ah agm, is it full', /^Nearly: .* till it takes about 2 A/],
    [
      '14.6V absorption and still 12A into a 100Ah AGM, is it full yet?',
      /^Not yet: 12 A into 100 Ah is 12 %/,
    ],
    [
      '200Ah lithium at 14.4 V taking 4A, is that full',
      /^Full: 4 A into 200 Ah is 2 %, and a charge ends at 2 to 5 %\./,
    ],
    ['20A charger at 14.4V on a 100Ah agm, how long till full', /^(?!Not yet|Full)/],
  ]);
});

describe('what a screen shows', () => {
  first([
    [
      'my solar thingy says 13.8v and 0.0A, midday full sun. is it broke',
      /^Most likely full, not broken: at 13\.8 V/,
    ],
    ['solar reads 12.3v and 0A in full sun, broken?', /^(?!Most likely full)/],
    [
      'monitor shows 13.1V -4.2A 78% 31h. wheres it get the 31h from?',
      /^It divides the Ah .*130 Ah at 4\.2 A is 31 h\.\n.*about 167 Ah/,
    ],
  ]);
});

describe('a jump pack by its mAh', () => {
  first([
    [
      'will a jump pack run my coolbox? jump pack says 12000mah and the coolbox is 45w',
      /^Hardly: about 50 minutes at 45 W; its 12,000 mAh are 44 Wh/,
    ],
    ['can a 10000mAh jump starter pack charge my phone a few times', /^About 2 phone charges/],
    ['will a jump pack run my coolbox', /^Phones and a light yes/],
  ]);
});

describe('who answers', () => {
  first([
    ['are you a bot', /^I’m Billywatt, a bot/],
    ['is billywatt a real person or what', /^I’m Billywatt, a bot/],
    ['billywatt are you a robot lol', /^I’m Billywatt, a bot/],
    ['who made you', /^I’m Billywatt, a bot/],
    ['are you bringing the human sized tent', /^(?!I’m Billywatt)/],
  ]);
});

describe('by night', () => {
  first([
    [
      'why does my fridge cut out at night but run fine in the day',
      /^Most likely the battery runs low: by day the sun/,
    ],
    [
      'why does my fridge cut out at night when the battery says 12.4',
      /^(?!Most likely the battery runs low)/,
    ],
  ]);
});

describe('nothing told', () => {
  first([
    [
      'what size solar panel do i need for a weekend away',
      /^About 200 W for a usual fridge, a few lights and phones[^\n]*\nA weekend may do without/,
    ],
    ['what size panel for my cpap', /cpap|Somebody’s health/i],
  ]);
});
