import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import type { RequestContext } from '#intents/intent.ts';
import { hear, nameOf, ownerOf } from '#intents/settle/claims.ts';
import { settle } from '#intents/settle/intent.ts';
import { judge } from '#intents/settle/judge.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Claim, Facts, Load } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const fridge = (currentA: number, isAverage = true): Load => ({
  name: 'fridge',
  count: 1,
  currentA,
  supply: 'dc',
  ...(isAverage ? { isAverage } : {}),
});
const claims = (...list: readonly (readonly [string, number, string])[]): Claim[] =>
  list.map(([who, value, unit]) => ({ who, value, unit }));

interface Case {
  readonly facts: Facts;
  readonly claims: Claim[];
  readonly cues?: readonly Cue[];
  readonly answer?: readonly [min: number, max: number];
  readonly closest?: string;
  readonly says?: RegExp;
  readonly rigs?: RequestContext['rigs'];
  readonly argued?: RequestContext['argued'];
}

const reply = ({ facts, claims: heard, cues = [], rigs = {}, argued }: Case) =>
  settle.reply(
    settle.needs.parse(facts),
    settingWith({ claims: heard, rigs, argued }, { claims: heard, cues: new Set(cues) }),
  );

/** Bounds by hand: usable share of the battery over the draw, label times sun times losses, Ohm and Watt. */
const cases: Readonly<Record<string, Case>> = {
  'bare figures after "how long?" are days where days come near: 40 Ah over 31 Ah a day': {
    facts: { batteries: [{ count: 1, capacityAh: 80, chemistry: 'agm' }], loads: [fridge(1.3)] },
    claims: claims(['Max', 1, ''], ['Lena', 4, '']),
    argued: 'run-time',
    answer: [1.1, 1.48],
    closest: 'Max',
    says: /Max is closest: it lasts about 1\.3 days/,
  },
  'bare figures after "how long?" are hours where hours come near: 40 Ah at 10 A, less by Peukert': {
    facts: {
      batteries: [{ count: 1, capacityAh: 80, chemistry: 'agm' }],
      loads: [{ ...fridge(10), name: 'heater' }],
    },
    claims: claims(['Max', 3, ''], ['Lena', 9, '']),
    argued: 'run-time',
    answer: [2.5, 4],
    closest: 'Max',
  },
  'a bare figure after "what fuse?" is amps: 125 % of 30 A, the next standard size': {
    facts: { loads: [{ ...fridge(30), name: 'pump' }], cable: { lengthM: 2, isRoundTrip: false } },
    claims: claims(['Sid', 25, ''], ['Ray', 40, '']),
    argued: 'fuse-size',
    answer: [40, 40],
    closest: 'Ray',
  },
  'days on lithium: 120–150 Ah over 48 Ah a day': {
    facts: { batteries: [{ count: 1, capacityAh: 150, chemistry: 'lfp' }], loads: [fridge(2)] },
    claims: claims(['ness', 3, 'days'], ['pat', 6, 'days']),
    answer: [2.47, 3.16],
    closest: 'ness',
    says: /Pat's 6 days is out of reach even run flat/,
  },
  'days on AGM: 40 Ah at 1.3 A': {
    facts: { batteries: [{ count: 1, capacityAh: 80, chemistry: 'agm' }], loads: [fridge(1.3)] },
    claims: claims(['Max', 3, 'days'], ['Lena', 1, 'days']),
    answer: [1.1, 1.48],
    closest: 'Lena',
  },
  'hours, and both far off': {
    facts: {
      batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
      loads: [{ name: 'load', count: 1, currentA: 10, supply: 'dc' }],
    },
    claims: claims(['ann', 40, 'h'], ['ben', 30, 'h']),
    answer: [3.78, 5.5],
    closest: 'ben',
    says: /^Neither is near/,
  },
  'both can be right': {
    facts: { batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp' }], loads: [fridge(1)] },
    claims: claims(['sal', 4, 'days'], ['me', 3.5, 'days']),
    answer: [3.3, 4.2],
    says: /^Both can be right.*\n.*Sal's 4 days would run it down to 4 %/,
  },
  'hours against days': {
    facts: { batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }], loads: [fridge(1)] },
    claims: claims(['jo', 48, 'h'], ['kit', 5, 'days']),
    answer: [45, 55],
    closest: 'jo',
  },
  'a panel by its label all day against by its sun': {
    facts: { solar: [{ count: 1, powerW: 100 }], peakSunHours: 5 },
    claims: claims(['he', 2400, 'Wh'], ['i', 400, 'Wh']),
    answer: [290, 425],
    closest: 'i',
    says: /480 % of the label.*which no panel does/,
  },
  'kWh against Wh': {
    facts: { solar: [{ count: 1, powerW: 200, controller: 'mppt' }], peakSunHours: 5 },
    claims: claims(['Colin', 1, 'kWh'], ['Ned', 700, 'Wh']),
    answer: [0.65, 0.85],
    closest: 'Ned',
  },
  'watts to amps at 12 V': {
    facts: { loads: [{ name: 'tv', count: 1, powerW: 100, supply: 'dc' }], systemVoltageV: 12 },
    claims: claims(['pam', 8, 'A'], ['ron', 1.2, 'A']),
    answer: [8.3, 8.34],
    closest: 'pam',
    says: /Ron's 1.2 A would be right at 83 V/,
  },
  'a battery for two days without sun': {
    facts: { dailyUseAh: 40, durationH: 48, batteries: [{ count: 1, chemistry: 'lfp' }] },
    claims: claims(['jim', 100, 'Ah'], ['shop', 300, 'Ah']),
    answer: [80, 125],
    closest: 'jim',
    says: /the shop's 300 Ah would mean using 27 % of it/,
  },
  'a fridge label all day against a duty cycle': {
    facts: { loads: [fridge(4, false)] },
    claims: claims(['i', 96, 'Ah'], ['partner', 45, 'Ah']),
    answer: [28.8, 57.6],
    closest: 'partner',
    says: /Your 96 Ah would mean it runs 24 of 24 hours/,
  },
  'series keeps the amp hours': {
    facts: { batteries: [{ count: 2, capacityAh: 200, voltageV: 6 }], arrangement: 'series' },
    claims: claims(['ola', 400, 'Ah'], ['piet', 200, '']),
    answer: [199, 201],
    closest: 'piet',
    says: /Ola's 400 Ah would be right in parallel/,
  },
  'one battery “in series” has a second like it': {
    facts: { batteries: [{ count: 1, capacityAh: 200, voltageV: 6 }], arrangement: 'series' },
    claims: claims(['ola', 400, 'Ah'], ['piet', 200, '']),
    answer: [199, 201],
    closest: 'piet',
  },
  'Ah against Wh of the same battery': {
    facts: { batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }] },
    claims: claims(['kit', 50, 'Ah'], ['lou', 1200, 'Wh']),
    answer: [49, 51],
    closest: 'kit',
    says: /Lou's 1200 Wh would run it flat/,
  },
  'how full at 12.2 V': {
    facts: { volts: 12.2, batteries: [{ count: 1, chemistry: 'agm' }] },
    claims: claims(['una', 50, '%'], ['vic', 90, '%']),
    answer: [40, 65],
    closest: 'una',
  },
  'panel watts for a use': {
    facts: { dailyUseAh: 40, peakSunHours: 5 },
    claims: claims(['abe', 150, 'W'], ['bea', 400, 'W']),
    cues: ['solar'],
    answer: [120, 180],
    closest: 'abe',
  },
  'a fuse at 125 % of 12 A, the next standard one': {
    facts: { loads: [{ name: 'load', count: 1, currentA: 12, supply: 'dc' }] },
    claims: claims(['X', 10, 'A'], ['Y', 15, 'A']),
    cues: ['fuse'],
    answer: [15, 20],
    closest: 'Y',
    says: /X's 10 A suits up to 8 A running, and this is 12 A/,
  },
  'copper for 20 A over 4 m at 3 %: 2 × 4 × 20 × 0.0175–0.0225 over 0.36–0.384 V': {
    facts: { cable: { lengthM: 4, currentA: 20, dropLimitPercent: 3 } },
    claims: claims(['he', 4, 'mm²'], ['i', 10, 'mm²']),
    answer: [7.29, 10],
    closest: 'i',
    says: /His 4 mm² is too thin: it would lose 7 % \(0\.84 V\)/,
  },
  'gauges are compared by their copper': {
    facts: { cable: { lengthM: 4, currentA: 20, dropLimitPercent: 3 } },
    claims: claims(['abe', 12, 'AWG'], ['bea', 8, 'AWG']),
    answer: [7.29, 10],
    closest: 'bea',
  },
  'a drop on 6 mm²: 2 × 6 × 10 × 3.3 mΩ': {
    facts: { cable: { lengthM: 6, currentA: 10, areaMm2: 6 } },
    claims: claims(['abe', 0.4, 'V'], ['bea', 1.5, 'V']),
    cues: ['ask-drop'],
    answer: [0.36, 0.48],
    closest: 'abe',
  },
  'hours of charging: 50 Ah missing and a 25 A charger': {
    facts: {
      batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp', stateOfChargePercent: 50 }],
      chargers: [{ kind: 'dcdc', currentA: 25 }],
    },
    claims: claims(['ed', 5, 'h'], ['mo', 2, 'h']),
    cues: ['drive'],
    answer: [1.9, 2.6],
    closest: 'mo',
    says: /Ed's 5 h would mean 10 A going in all the time/,
  },
  'amps to watts': {
    facts: { loads: [{ name: 'pump', count: 1, currentA: 5, supply: 'dc' }], systemVoltageV: 12 },
    claims: claims(['abe', 60, 'W'], ['bea', 5, 'W']),
    answer: [59, 61],
    closest: 'abe',
  },
};

describe('arguments', () => {
  test.for(Object.entries(cases))('%s', ([, c]) => {
    const answer = reply(c);
    const text = print(answer);
    const { value, low, high } = present(answer.figures).answer as {
      value: number;
      low: number;
      high: number;
    };
    expect(value).toBeGreaterThanOrEqual(present(c.answer)[0]);
    expect(value).toBeLessThanOrEqual(present(c.answer)[1]);
    expect(low).toBeLessThanOrEqual(value);
    expect(high).toBeGreaterThanOrEqual(value);
    if (c.closest) expect(present(answer.figures).closest).toEqual({ value: c.closest });
    if (c.says) expect(text).toMatch(c.says);
    expect(text).not.toMatch(/NaN|undefined|Infinity/);
    expect(text.length).toBeLessThan(1000);
  });

  test('an inverter that is too small does not work for a short time either', () => {
    const answer = reply({
      facts: {
        inverter: { powerW: 500 },
        loads: [{ name: 'hair dryer', count: 1, powerW: 800, supply: 'ac' }],
      },
      claims: [],
      cues: ['inverter'],
    });
    expect(answer.verdict).toBe('no');
    expect(print(answer)).toMatch(/however short/);
  });

  test('two rigs of the chat: whose runs out first', () => {
    const answer = reply({
      facts: {},
      claims: [],
      cues: ['ask-whose'],
      rigs: {
        una: { batteries: [{ count: 1, capacityAh: 80, chemistry: 'agm' }], loads: [fridge(0.8, false)] },
        seb: { batteries: [{ count: 1, capacityAh: 60, chemistry: 'lfp' }], loads: [fridge(1.6, false)] },
      },
    });
    expect(present(answer.figures).closest).toEqual({ value: 'seb' });
    expect(answer.headline).toMatch(/^Seb's runs out first/);
  });

  test.for([
    ['nothing but numbers of hours', { facts: {}, claims: claims(['ed', 5, 'h'], ['mo', 2, 'h']) }],
    [
      'hours of driving without battery or charger',
      { facts: {}, claims: claims(['ed', 5, 'h'], ['mo', 2, 'h']), cues: ['drive'] },
    ],
    ['nothing at all', { facts: {}, claims: [] }],
    [
      'a battery and no load',
      { facts: { batteries: [{ count: 1, capacityAh: 100 }] }, claims: claims(['ed', 5, 'h']) },
    ],
    ['a panel argument without a use', { facts: {}, claims: claims(['ed', 50, 'W']), cues: ['solar'] }],
  ] as const)('%s is asked back, and nobody is called right', ([, c]) => {
    const answer = reply(c as unknown as Case);
    expect(present(answer.lines).at(-1)).toMatch(/\?$/);
    expect(answer.headline.length).toBeLessThanOrEqual(100);
    expect(answer.figures).toEqual({});
    expect(answer.headline).not.toMatch(/right|closest/);
  });
});

describe('claims', () => {
  test('a bare number has the unit of its neighbour', () => {
    expect(hear(claims(['a', 3, 'days'], ['b', 6, ''])).map(c => [c.value, c.unit])).toEqual([
      [72, 'days'],
      [144, 'days'],
    ]);
  });
  test.for([
    ['me', 'you', 'your'],
    ['Robin', 'you', 'your'],
    ['he', 'he', 'his'],
    ['partner', 'your partner', "your partner's"],
    ['shop', 'the shop', "the shop's"],
    ['lou', 'Lou', "Lou's"],
    ['my mate', 'your mate', "your mate's"],
    ['you', 'the other', "the other's"],
    ['bot', 'I', 'my'],
  ] as const)('%s is called %s, of whom it is %s', ([who, name, owner]) => {
    expect(nameOf(who, 'robin')).toBe(name);
    expect(ownerOf(who, 'robin')).toBe(owner);
  });
  test('half is as far off as double', () => {
    const heard = hear(claims(['low', 49, 'Ah'], ['high', 200, 'Ah']));
    expect(present(judge(heard, { value: 100, low: 95, high: 105 }).ranked[0]).who).toBe('high');
  });
});

describe('with no number told', () => {
  const own = {
    headline: 'It lasts about 1 day.',
    lines: ['A 75 Ah AGM gives you about 38 Ah to use.'],
    figures: { runTime: { value: 24, low: 20, high: 30, unit: 'h' } },
  };
  const told = (answer: object) =>
    settle.reply({}, settingWith({ contested: { sides: [], answer: () => ({ ...own, ...answer }) } }));
  test('the bot tells its own count, and asks for theirs', () => {
    const { headline, lines } = told({});
    expect(headline).toBe('By my count: It lasts about 1 day.');
    expect(lines?.[0]).toMatch(/^Tell me each one’s number/);
  });
  test('a yes or no needs none', () => {
    expect(told({ verdict: 'no' }).lines).toEqual(own.lines);
  });
  test('and an answer in words is no count', () => {
    expect(told({ figures: {} }).headline).toBe('By what I know: It lasts about 1 day.');
  });
});

test.each([
  [1, 'week', 'days'],
  [3, 'days', 'days'],
] as const)('a claim of %d %s is answered in %s', (value, unit, answered) => {
  const facts = settle.needs.parse({
    batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
    dailyUseAh: 30,
  });
  const said = claims(['lee', value, unit]);
  const { headline } = settle.reply(facts, settingWith({ claims: said }, { claims: said }));
  expect(headline).toMatch(new RegExp(`it lasts about [\\d.]+ ${answered} \\(`));
});
