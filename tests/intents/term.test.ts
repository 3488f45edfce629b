import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { cautions as cautionWords } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { RequestContext } from '#intents/intent.ts';
import { term } from '#intents/term/intent.ts';
import { distance, nearest, termsIn } from '#intents/term/match.ts';
import { terms } from '#intents/term/terms.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Facts } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const ask = (said: Partial<ParsedMessage>, facts: Facts = {}, changes: Partial<RequestContext> = {}) =>
  term.reply(term.needs.parse(facts), settingWith(changes, said));
const text = (said: Partial<ParsedMessage>, facts: Facts = {}, changes: Partial<RequestContext> = {}) =>
  print(ask(said, facts, changes));

describe('the glossary', () => {
  test('has about sixty terms, each in two or three short sentences with an example', () => {
    expect(terms.length).toBeGreaterThanOrEqual(60);
    expect(terms.filter(t => t.says.length < 2 || t.says.length > 3 || !t.example)).toEqual([]);
    expect(terms.filter(t => t.caution && !(t.caution in cautionWords))).toEqual([]);
  });
  test('writes nothing two ways and keeps to lower case', () => {
    const all = terms.flatMap(t => [t.key, ...t.aliases]);
    expect(all.filter((a, i) => all.indexOf(a) !== i)).toEqual([]);
    expect(all.filter(a => a !== a.toLowerCase())).toEqual([]);
  });
  test('knows every term by its key and by each alias', () => {
    for (const t of terms) for (const a of [t.key, ...t.aliases]) expect(termsIn(a)[0]?.key, a).toBe(t.key);
  });
  test('fits a phone', () => {
    for (const t of terms) expect(text({ term: t.key }).length, t.key).toBeLessThan(600);
  });
});

test.for([
  ['anderson plug', 'two-pole connector'],
  ['an amp hour', 'amp hour'],
  ['amp hours', 'amp hour'],
  ['depth of dicharge', 'depth of discharge'],
  ['peak sun hours, isnt that just daylight', 'peak sun hours'],
  ['an inverter and do i need one for phones', 'inverter'],
  ['inverer', 'inverter'],
  ['means a bms', 'bms'],
  ['isolater', 'isolator'],
  ['dc-dc', 'dc-dc charger'],
  ['the mppt thing', 'mppt'],
  ['PWM', 'pwm'],
  ['b&s', 'awg'],
  ['sulfation', 'sulphation'],
  ['paralell', 'parallel'],
] as const)('“%s” is %s', ([phrase, key]) => {
  expect(termsIn(phrase)[0]?.key).toBe(key);
});

test.for([
  ['depth of discharge', /share of a battery's capacity that you have taken out/],
  ['peak sun hours', /1000 W/],
  ['inverter', /230 V/],
  ['anderson plug', /plug/],
  ['generator kva', /power factor/],
  ['auto cable', /4\.6 mm²/],
  ['bms', /never bypass it/],
] as const)('%s says the thing that matters', ([phrase, says]) => {
  expect(text({ term: phrase })).toMatch(says);
});

test.for([
  ['a watt more than an amp', /volts times amps/],
  ['difference between watt and amp', /volts times amps/],
  ['mppt or pwm', /a fifth more/],
  ['the difference between agm and lithium', /AGM about half/],
  ['6mm auto cable the same as 6 mm2', /4\.6 mm²/],
  ['difference between a shunt and a fuse', /A shunt is[\s\S]*A fuse is/],
  ['watt amp', /volts times amps/],
  ['shunt fuse', /A shunt is[\s\S]*A fuse is/],
] as const)('two terms: %s', ([phrase, says]) => {
  expect(text({ term: phrase })).toMatch(says);
});

describe('why not all of the label', () => {
  const batteries: Facts['batteries'] = [{ count: 1, capacityAh: 100 }];
  test('lead-acid: half, with the number', () => {
    const answer = text({ cues: new Set(['ask-why']) }, { batteries });
    expect(answer).toMatch(/50 %/);
    expect(answer).toMatch(/about 50 Ah are for use/);
  });
  test('asked as the word itself', () => {
    expect(text({ term: 'depth of discharge', cues: new Set(['ask-why']) })).toMatch(/^Because.*50 %/);
  });
  test('lithium: most of it', () => {
    const lithium: Facts = { batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp' }] };
    expect(text({ cues: new Set(['ask-why']) }, lithium)).toMatch(/80 to 100 %/);
  });
});

test('a number from the chat’s own battery, where it is known', () => {
  const facts: Facts = { batteries: [{ count: 1, capacityAh: 120, chemistry: 'agm' }] };
  const said = { term: 'depth of discharge' };
  expect(text(said, facts, { recalled: new Set(['batteries']) })).toMatch(/Of your 120 Ah about 60 Ah/);
});

describe('what it does not know', () => {
  test('an unknown word is asked back, with near ones', () => {
    const answer = ask({ term: 'flux capacitor' });
    expect(answer.headline).toMatch(/I don't know “flux capacitor”.*\?$/);
    expect(present(answer.next).length).toBeGreaterThan(0);
  });
  test('a word a little off is offered', () => {
    expect(nearest('invrt').map(t => t.key)).toContain('inverter');
  });
  test('nothing asked after is asked back', () => {
    expect(ask({}).headline).toMatch(/\?$/);
  });
  test('a very long phrase is cut', () => {
    expect(print(ask({ term: 'zq '.repeat(1300) })).length).toBeLessThan(300);
  });
});

test.for([
  ['abc', 'abc', 0],
  ['abc', 'acb', 1],
  ['kitten', 'sitting', 3],
  ['', 'ab', 2],
] as const)('from “%s” to “%s” are %d changes', ([a, b, want]) => {
  expect(distance(a, b)).toBe(want);
});
