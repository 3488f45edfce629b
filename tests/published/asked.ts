import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { type Row, row } from './row.ts';

const at = new Date('2026-01-15T09:00:00Z');

/** A figure of the answer to one message, in a chat without memory. */
function asked(text: string, figure: string, end: 'value' | 'low' | 'high' = 'value'): number {
  const { answer } = converse(emptyMemory(), { chat: 'c', from: 'kim', text, at, kind: 'group' });
  const found = answer.figures[figure];
  if (found === undefined || !('unit' in found)) throw new Error(`no ${figure} for: ${text}`);
  return found[end];
}

const half = 'common practice: half of lead-acid, four fifths of lithium';
const definition = 'definition, worked out by hand';
const common = 'common practice, worked out by hand';

const list: readonly (readonly [
  id: string,
  from: string,
  how: Row['how'],
  gives: number,
  within: number,
  text: string,
  figure: string,
])[] = [
  [
    'ask-01',
    definition,
    'recomputed',
    24,
    0.01,
    'Two 100Ah AGM batteries in series, what do I get?',
    'bankVoltage',
  ],
  [
    'ask-02',
    definition,
    'recomputed',
    100,
    0.1,
    'Two 100Ah AGM batteries in series, what do I get?',
    'bankCapacity',
  ],
  ['ask-03', half, 'memory', 10, 0.5, 'How long will a 100Ah AGM battery run a 5A light?', 'runTime'],
  [
    'ask-04',
    `${half}: 50 − 20 Ah at 5 A`,
    'memory',
    6,
    0.3,
    '100Ah AGM at 80%, how long will it run a 5A pump?',
    'runTime',
  ],
  [
    'ask-05',
    'LFP cells: 85 to 90 % at 0 °C, four fifths of it used, at 10 A',
    'memory',
    6.96,
    0.4,
    'How long does a 100Ah lithium battery run a 10A fan at 0 degrees?',
    'runTime',
  ],
  [
    'ask-06',
    'LFP gives back 99 % of its charge',
    'memory',
    30.3,
    0.1,
    '30 Ah out of a 100Ah lithium, 20A mains charger, how long to charge?',
    'chargeNeeded',
  ],
  [
    'ask-07',
    'Stevens & Corey (Sandia): above 95 % while low; 30 Ah at 20 A',
    'recomputed',
    1.54,
    0.12,
    'How long to charge a 100Ah AGM from 50% to 80% with a 20A mains charger?',
    'chargeTime',
  ],
  [
    'ask-08',
    'LFP takes a constant current nearly to the end; 80 Ah at 25 A and its last few per cent',
    'memory',
    3.4,
    0.3,
    'How long to charge a 100Ah lithium from 20% with a 25A dcdc charger?',
    'chargeTime',
  ],
  [
    'ask-09',
    'power in = power out ÷ efficiency: 1,000 W at 90 % and 12 V',
    'recomputed',
    92.6,
    0.5,
    'How many amps does a 1000W kettle pull through a 1500W inverter from a 12V battery?',
    'batteryCurrent',
  ],
  ['ask-10', 'NEC 125 % rule, from memory', 'memory', 25, 0, 'What fuse for a 20A load?', 'fuseRating'],
  [
    'ask-11',
    'IEC 60228: 10 mm² has 1.91 mΩ/m at 20 °C, 6 % more at 35 °C; 20 A over 5 m there and back',
    'recomputed',
    0.404,
    0.005,
    'What cable for a 20A load, 5m, 12V?',
    'voltageDrop',
  ],
  ['ask-12', definition, 'recomputed', 8.333, 0.01, '100W at 12V, how many amps?', 'result'],
  ['ask-13', definition, 'recomputed', 20, 0.01, '240Wh at 12V in Ah', 'result'],
  ['ask-14', definition, 'recomputed', 480, 0.1, '5A at 12V for 8 hours, how many Wh?', 'result'],
  [
    'ask-15',
    definition,
    'recomputed',
    44,
    0.1,
    'Two 100W panels, 22V open circuit, in series on mppt, what voltage?',
    'stringVoltage',
  ],
  [
    'ask-16',
    'silicon, −0.3 %/K of open-circuit volts: 44 V at −15 °C',
    'memory',
    49.3,
    0.8,
    'Two 100W panels, 22V open circuit, in series on mppt, what voltage?',
    'coldVoltage',
  ],
  [
    'ask-17',
    '200 W at 95 % into 13.2 V',
    'recomputed',
    14.4,
    0.5,
    'Two 100W panels, 22V open circuit, in series on mppt, what voltage?',
    'chargeCurrent',
  ],
  [
    'ask-18',
    'common practice: a 100 W panel brings 30 Ah on a fair day',
    'memory',
    30,
    3,
    'How much will a 100W panel make a day?',
    'dailyYield',
  ],
  [
    'ask-19',
    `${half}: 80 Ah over two days`,
    'memory',
    160,
    5,
    'How big a battery for 40Ah a day for 2 days, agm?',
    'batteryCapacity',
  ],
  [
    'ask-20',
    `${common}: 20 A at 14.4 V, 87 % and a power factor of 0.8`,
    'recomputed',
    413.8,
    2,
    'What size generator for a 20A charger?',
    'generatorPower',
  ],
  [
    'ask-21',
    `${half}: 50 Ah of 100`,
    'memory',
    50,
    1,
    'compare AGM and lithium 100Ah over its life',
    'usableCapacityAgm',
  ],
  [
    'ask-22',
    `${half}: 80 Ah of 100`,
    'memory',
    80,
    1,
    'compare AGM and lithium 100Ah over its life',
    'usableCapacityLfp',
  ],
];

export const rows: readonly Row[] = list.map(([id, from, how, gives, within, text, figure]) =>
  row(id, `${from} (“${text}”)`, how, gives, within, () => asked(text, figure)),
);
