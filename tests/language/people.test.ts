import { describe, expect, test } from 'vitest';
import { said } from './reading.ts';

type Told = readonly [who: string, value: number, unit: string];

const claims: readonly (readonly [text: string, ...told: Told[]])[] = [
  ['rob says 3 days, tess says 5', ['rob', 3, 'days'], ['tess', 5, 'days']],
  ['rob says three days and tess says five', ['rob', 3, 'days'], ['tess', 5, 'days']],
  ['max reckons 40 hours, i reckon 30', ['max', 40, 'h'], ['i', 30, 'h']],
  ['my brother thinks it lasts 2 days. i think 4', ['brother', 2, 'days'], ['i', 4, 'days']],
  ['dave: 8A. steve: 4A', ['dave', 8, 'A'], ['steve', 4, 'A']],
  ['dave 40 hours, steve 30 hours, who wins', ['dave', 40, 'h'], ['steve', 30, 'h']],
  ['bob 100ah, me 200', ['bob', 100, 'Ah'], ['me', 200, 'Ah']],
  ['he says 4mm2, i say 10mm2', ['he', 4, 'mm²'], ['i', 10, 'mm²']],
  ['the shop said 200ah, bill wants 100ah', ['shop', 200, 'Ah'], ['bill', 100, 'Ah']],
  ['X says 15A fuse, Y says 20A', ['x', 15, 'A'], ['y', 20, 'A']],
  ['hubby claims 1kwh a day, I say more like 600wh', ['hubby', 1000, 'Wh'], ['i', 600, 'Wh']],
  ['sal says 4 days (96h) and me 3', ['sal', 4, 'days'], ['me', 3, 'days']],
  ['he reckons a 150w panel = 150w all day = 3600wh. i reckon 600', ['he', 3600, 'Wh'], ['i', 600, 'Wh']],
  ['my mate swears 12v is 60% and I say 20%', ['mate', 60, '%'], ['i', 20, '%']],
  ['Colin says 0.4V drop, Ned says 0.8', ['colin', 0.4, 'V'], ['ned', 0.8, 'V']],
  ['rob reckons we need 300w, tess reckons 150w is heaps', ['rob', 300, 'W'], ['tess', 150, 'W']],
  [
    'lou reckons you need 10mm2 for 30 amps over 3 metres, i said 6 is fine',
    ['lou', 10, 'mm²'],
    ['i', 6, 'mm²'],
  ],
  [
    'my brother in law reckons 90ah runs a 1A fridge 4 days, i say 2',
    ['brother in law', 4, 'days'],
    ['i', 2, 'days'],
  ],
  ["mother-in-law says a week, I'd say two days", ['mother in law', 7, 'days'], ['i', 2, 'days']],
  ['hubby says we use 60ah, the fridge is 2A average. he right?', ['hubby', 60, 'Ah']],
  ['my bat says 12.3v this morning'],
  ['the gauge says 11.9 volts'],
];

describe('who says what', () => {
  test.for(claims)('%s', ([text, ...told]) => {
    expect(said(text).claims.map(c => [c.who, c.value, c.unit])).toEqual(told);
  });

  test.for([
    'fridge 1A, 100ah agm, how long',
    'the label says 4 amps',
    'multimeter says 12.3',
    'it says 60% on the display',
    'rig: 100ah agm, fridge 1A',
    'can i say thanks',
    'lights: 1A x 5h',
    '100ah agm, 60w fridge 3 days ok?',
  ])('%s: nobody claims anything', text => {
    expect(said(text).claims).toEqual([]);
  });

  test.for([
    ['two 6v 220ah in series makes 440ah', 440, 'Ah'],
    ['no it stays 220', 220, ''],
    ['nah 3 days easy', 3, 'days'],
    ['100ah agm with a 1A fridge runs 2 days i reckon', 2, 'days'],
  ] as const)('%s: the speaker claims', ([text, value, unit]) => {
    expect(said(text).claims).toEqual([{ who: 'kim', value, unit }]);
  });
});

describe('whose rig', () => {
  test.for([
    ['mine is 100ah agm', 'me'],
    ['my rig: 100ah agm', 'me'],
    ['our setup: 100ah agm', 'us'],
    ["dad's rig is 100ah agm", 'dad'],
    ['mums setup: 80ah gel', 'mum'],
    ["how long does rob's last", 'rob'],
    ['ok just tess then', undefined],
    ["what's the drop", undefined],
    ['how long do 100ah agms last', undefined],
    ['use my mates 120ah lithium', undefined],
  ] as const)('%s', ([text, owner]) => {
    expect(said(text).owner).toBe(owner);
  });

  test('several owners in order', () => {
    expect(said('which lasts longer, mine or dads?').owners).toEqual(['me', 'dad']);
  });
});

describe('corrections', () => {
  test.for([
    ['*75 not 57', { from: 57, to: 75 }],
    ['no, its 100 not 120', { from: 120, to: 100 }],
    ['sorry 2.5 amps not 1.25', { from: 1.25, to: 2.5, unit: 'A' }],
    ['I meant 75ah', { to: 75, unit: 'Ah' }],
    ['oops, 75ah', { to: 75, unit: 'Ah' }],
    ['not 57 but 75', { from: 57, to: 75 }],
    ['75ah instead of 57ah', { from: 57, to: 75, unit: 'Ah' }],
    ['3 days not 2', { from: 48, to: 72, unit: 'h' }],
  ] as const)('%s', ([text, want]) => {
    expect(said(text).corrections).toEqual([want]);
    expect(said(text).cues.has('correction')).toBe(true);
  });

  test.for(['not sure, 100ah?', 'fridge 1A not much else', 'no, 2 days is fine'])(
    '%s: corrects nothing',
    text => {
      expect(said(text).corrections).toEqual([]);
    },
  );
});

describe('left out', () => {
  test.for([
    ['and without the lights', ['light']],
    ['forget the heater', ['heater']],
    ['remove the solar from my rig', ['solar']],
    ['take out the kettle', ['kettle']],
    ['turn the heater off', ['heater']],
    ['drop the fan and the telly', ['fan', 'telly']],
    ['without the kettle, how long', ['kettle']],
    ['if we leave out the microwave', ['microwave']],
    ['ditch the lights', ['light']],
    ['forget everything', []],
    ['voltage drop on the fridge cable', []],
    ['cpap no humidifier 25w', []],
  ] as const)('%s', ([text, names]) => {
    expect(said(text).removed).toEqual(names);
  });
});
