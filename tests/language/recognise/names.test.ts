import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { isOneSlip, Near } from '#language/recognise/near.ts';
import { recognise } from '#language/recognise/recognise.ts';

const kinds = (text: string): string[] =>
  recognise(text)
    .mentions.filter(m => m.kind !== 'word' && m.kind !== 'sign')
    .map(m => (m.kind === 'thing' || m.kind === 'noun' ? `${m.kind}:${m.text}` : `${m.kind}:${m.key}`));

describe('names, gear and people', () => {
  test.for<[text: string, kinds: string[]]>([
    ['my fridge', ['thing:fridge']],
    ['two fridges', ['number:', 'thing:fridges']],
    ['water pump', ['thing:water pump']],
    ['lithium', ['chemistry:lfp']],
    ['an AGM', ['chemistry:agm']],
    ['starter battery', ['role:starter']],
    ['mppt', ['controller:mppt']],
    ['dc-dc charger', ['charger:dcdc']],
    ['in parallel', ['arrangement:parallel']],
    ['in series', ['arrangement:series']],
    ['a pure sine inverter', ['wave:pure-sine']],
    ['Dubbo, July', ['place:dubbo', 'month:7']],
    ['brother-in-law reckons', ['person:kin']],
    ['overcast', ['sky:overcast']],
    ['a zorbling frump', ['noun:zorbling frump']],
    ['cam 0.4 A', ['thing:cam', 'amount:A']],
    ['organ 45 W', ['thing:organ', 'amount:W']],
    ['at rest', []],
    ['crank batt 80', ['role:starter', 'number:']],
    // Longer than the person or the thing that it begins with.
    ['160W in Alice Springs in June', ['amount:W', 'place:alice springs', 'month:6']],
    ['mount isa, may', ['place:mount isa', 'month:5']],
    ['Margaret River, March', ['place:margaret river', 'month:3']],
    ['Alice has a mount', ['person:name', 'thing:mount']],
    ['LA PAZ, BOLIVIA, IN JUNE', ['place:la paz , bolivia', 'month:6']],
    // People by what is theirs.
    ["Lee's called", ['person:name']],
    ["Ned's guess", ['person:name']],
    ["grandad's saying", ['person:kin']],
    ["it's what's there", []],
    // Until when, and where the money goes.
    ['ok till 7', ['clock:7:00']],
    ['good till 7am', ['clock:7am']],
    ['we sold the old till', ['thing:till']],
    ['lasts till we wake', []],
    ['the till 25 W', ['thing:till', 'amount:W']],
    // How volts were taken, how old, how long, and what is ruled out.
    ['under load', []],
    ['load 5 W', ['thing:load', 'amount:W']],
    ['a year old', ['amount:years']],
    ['week, no sockets', ['amount:weeks', 'without:mains']],
    ['- 3 days', ['amount:days']],
    ['metre and a half', ['amount:m']],
    ['leave out the inverter', ['without:inverter']],
    ['the 80 starts the truck', ['number:', 'role:starter']],
    ['@kaz_04 says', ['noun:kaz_04']],
    ['month: 3', ['month:3']],
    ["two AGM 100's", ['number:', 'chemistry:agm', 'number:']],
    ['two 12s', ['number:', 'number:']],
    ['0,18 A day and night', ['amount:A', 'always:']],
    ['a lamp an hour a day', ['thing:lamp', 'amount:h', 'rate:day']],
    ['reading, may', ['place:reading', 'month:5']],
    ['solar in june', ['solar:', 'month:6']],
    ['battery lead 88 Ah', ['cable:lead-acid', 'amount:Ah']],
    ['a tank gauge .1 A', ['amount:A']],
    ['till 15W, lights 20W', ['thing:till', 'amount:W', 'thing:lights', 'amount:W']],
  ])('%s', ([text, want]) => {
    expect(kinds(text)).toEqual(want);
  });
});

test('nothing of a message is left out of its mentions', () => {
  const { tokens, mentions } = recognise('fridge 1.2A, 100Ah AGM in Broome: how long (roughly)?');
  expect(present(mentions[0]).from).toBe(0);
  expect(present(mentions.at(-1)).to).toBe(tokens.length);
  mentions.slice(1).forEach((m, i) => {
    expect(m.from).toBe(present(mentions[i]).to);
  });
});

test('a slip stands for the word it was meant for', () => {
  expect(recognise('the frigde').mentions.map(m => m.text)).toContain('fridge');
  expect(recognise('invertor').mentions[0]).toMatchObject({ kind: 'inverter' });
});

test('one slip is a letter too many, too few, wrong, or two swapped', () => {
  for (const slip of ['fridgee', 'frige', 'fredge', 'frigde']) expect(isOneSlip('fridge', slip)).toBe(true);
  for (const other of ['bridges', 'friend', 'fidgre']) expect(isOneSlip('fridge', other)).toBe(false);
});

test('a slip keeps its first letter', () => {
  const near = new Near(['fridge', 'battery']);
  expect(near.find('frigde')).toBe('fridge');
  expect(near.find('bridge')).toBeUndefined();
});
