import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { plainQuestionIn, plainQuestions } from '#intents/term/plain/plain-questions.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { talk } from '../conversation/talk.ts';

const named = (text: string) => plainQuestionIn({ recognised: recognise(text) })?.name;

describe('plain questions', () => {
  test('each has a name of its own, a first line that a phone shows whole, and three lines more at most', () => {
    const names = plainQuestions.map(({ name }) => name);
    expect(names).toEqual([...new Set(names)]);
    expect(plainQuestions.filter(({ says }) => says.length > 100).map(({ name }) => name)).toEqual([]);
    expect(plainQuestions.filter(({ lines }) => lines.length > 3).map(({ name }) => name)).toEqual([]);
    for (const { name, says, lines } of plainQuestions)
      expect(print({ headline: says, lines }).length, name).toBeLessThan(600);
  });
  test('the buttons under each are understood', () => {
    const lost = [...new Set(plainQuestions.flatMap(({ next = [] }) => next))].filter(say => {
      const { last } = talk([`ann: ${say}`], { kind: 'private' });
      return ['none', 'help', 'unclear'].includes(last.intent);
    });
    expect(lost).toEqual([]);
  });
});

test.for([
  ['what does the negative sign on my shunt mean', 'minus-current'],
  ['meter shows minus 3 amps, does minus mean its charging?', 'minus-current'],
  ['whats low voltage cut-off', 'cut-off'],
  ['what volts should a full lithium battery be at', 'full-volts'],
  ['how low can i safely take my agm', 'stop-at'],
  ['how can i tell how full the battery is', 'how-full-at-all'],
  ['is 4% voltage drop acceptable', 'drop-ok'],
  ['controller shows float already, is that normal', 'float'],
  ['how do you measure voltage with a multimeter', 'read-volts'],
  ['is it ok to charge lithium batteries in the frost', 'charge-in-the-cold'],
  ['whats the easiest way to charge our phones at camp', 'phones-off-the-car'],
  ['can the alternator and the solar panel charge at the same time', 'solar-while-driving'],
  ['can i hook a solar panel directly to the battery', 'solar-no-controller'],
  ['can solar overcharge my battery', 'solar-overcharge'],
  ['do i need a new charger if i swap to lithium', 'lithium-swap'],
  ['can i use my old agm charger on a lithium battery', 'lithium-on-a-plain-charger'],
  ['how often do batteries need charging', 'recharge-often'],
  ['will mixing two different panels work', 'mixed-panels'],
  ['do panels still charge when its overcast', 'clouds'],
  ['which way should solar panels face', 'facing'],
  ['should i turn the inverter off at night', 'inverter-left-on'],
  ['is cold bad for batteries', 'cold-weather'],
  ['how can i test if a battery is dead', 'worn-out'],
  ['how many years does a lithium battery last', 'years'],
  ['how should i store my agm battery over winter', 'storing'],
  ['is it safe to have a lithium battery inside the tent', 'battery-indoors'],
  ['can solar panels be left out in the rain', 'wet-gear'],
  ['can 12 volts give you a shock', 'touching'],
  ['is lithium lighter than agm', 'weight'],
  ['should we turn the fridge off overnight', 'fridge-at-night'],
  ['do i need pure sine wave', 'pure-sine'],
  ['do i need an inverter to charge a laptop', 'need-an-inverter'],
  ['do i really need a fuse', 'need-a-fuse'],
  ['does the panel work through the windscreen', 'panel-behind-glass'],
  ['which end of the wire should the fuse go', 'fuse-place'],
  ['would a circuit breaker be better', 'breaker-instead'],
  ['why must a fuse be smaller than what the wire can take', 'fuse-for-the-cable'],
  ['how do you link batteries in parallel', 'join-batteries'],
  ['what temperature should a camping fridge be', 'fridge-temperature'],
  ['can you run lights straight from a solar panel without a battery', 'panel-alone'],
  ['how do i calibrate the shunt', 'reset-the-monitor'],
  ['monitor reads full but volts are low', 'monitor-astray'],
  ['does idling charge the house battery', 'idling'],
  ['will the dcdc flatten my starter overnight', 'dcdc-parked'],
  ['can an agm lie on its side', 'on-its-side'],
  ['should the solar be unplugged while using the mains charger', 'solar-while-driving'],
  ['what happens when the battery goes below half', 'below-the-line'],
  ['tips to save battery', 'save-power'],
] as const)('“%s” asks %s', ([text, name]) => expect(named(text)).toBe(name));

test.for([
  'fridge 1.2A, 100Ah, 3 days?',
  'the monitor shows minus 4 amps, 60 Ah left, how long?',
  'should i turn the 2000W inverter off at night, 100Ah',
  'how long does a 100Ah lithium last with a fridge',
  'what size inverter do i need for a kettle',
  'how much will a 200W panel make if it is cloudy',
  'do you store our chat',
  'what fuse for 10A',
  'fridge turned itself off in the night',
  'is 100Ah enough',
])('“%s” is a question of its own', text => expect(named(text)).toBeUndefined());

describe('in a talk', () => {
  test('what can be worked out is worked out', () => {
    const { last } = talk(['ann: can a 100Ah agm run a 1.2A fridge overnight?']);
    expect(last.intent).toBe('run-time');
  });
  test('words without a figure are answered in words, and the question before still stands', () => {
    const { answers } = talk([
      'ann: fridge 1.2A, 100Ah agm, how long?',
      'ann: can i leave the inverter on all night?',
      'ann: what if lithium?',
    ]);
    expect(answers[1]?.text).toMatch(/^Switch it off/);
    expect(answers[2]?.intent).toBe('run-time');
  });
  test('what points back is of what was spoken of', () => {
    const { answers } = talk([
      'ann: what fuse for a 25A dcdc?',
      'ann: where do i put it?',
      'ann: why that one?',
    ]);
    expect(answers[1]?.text).toMatch(/^At the battery end/);
    expect(answers[2]?.intent).toBe('fuse-size');
  });
  test('a danger is answered as one', () => {
    const { last } = talk(['ann: the battery under the bed is swollen and hot, is it ok to sleep there?']);
    expect(last.hazards).toContain('battery-fire');
  });
});
