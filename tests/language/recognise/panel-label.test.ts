import { expect, test } from 'vitest';
import { recognise } from '#language/recognise/recognise.ts';

const labelled = (text: string): Record<string, string | undefined> =>
  Object.fromEntries(
    recognise(text)
      .mentions.filter(({ label }) => label !== undefined)
      .map(({ told, label }) => [String(told), label]),
  );

test.for<[text: string, told: Record<string, string>]>([
  [
    'two panels 18.2V Vmp 22.4V Voc 8.8A Imp, in series?',
    { 18.2: 'working volts', 22.4: 'open volts', 8.8: 'amps' },
  ],
  ['Vmp 18.2 Voc 22.4 Isc 9.1', { 18.2: 'working volts', 22.4: 'open volts', 9.1: 'amps' }],
  ['160W panel, voc: 24.3V, imp = 9 A', { 24.3: 'open volts', 9: 'amps' }],
  ['the sticker has a Voc of 21.6', { 21.6: 'open volts' }],
  ['100 W, 22 V voc', { 22: 'open volts' }],
  ['a 120 W voc 22', { 22: 'open volts' }],
  ['what is voc', {}],
  ['voc on a 100W panel', {}],
  ['22.4 V open', {}],
])('%s', ([text, told]) => expect(labelled(text)).toEqual(told));
