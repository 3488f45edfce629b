import { describe, expect, test } from 'vitest';
import { choiceIn, yesOrNo } from '#conversation/turns/side-words.ts';
import { type Turn, talk } from './talk.ts';

const chat = (turns: readonly Turn[]) => talk(turns, { apartMin: 2 });

const kinds: Turn = 'Ann: AGM or lithium for a 2 A fridge?';
const sources: Turn =
  'Ann: does the solar or the alternator put in more? 100 W panel, 25A dcdc, 2 h driving, Dubbo in june';
const weekend: Turn = 'Ann: 100Ah agm, fridge 2A average, will it last the weekend?';
const lasting: Turn = 'Ann: 200Ah lithium, fridge 1A average, will it last 3 days?';
const kettle: Turn = 'Ann: will a 600W inverter run a 900W kettle?';
const path: Turn = 'Ann: isolator or dcdc for a 100Ah lithium with a smart alternator?';

describe('sides without a number are settled by the bot’s own answer', () => {
  test.for<[asked: Turn, one: Turn, other: Turn, call: Turn, says: RegExp, closest: string]>([
    [
      kinds,
      'Bea: lithium',
      'Cal: agm, cheaper',
      'Bea: so who?',
      /^You are right\..*\nYou say lithium; Cal says AGM\./,
      'bea',
    ],
    [
      kinds,
      'Bea: gel every time',
      'Cal: has to be lithium',
      'Dot: bot?',
      /^Cal is right\..*\nBea says gel; Cal says lithium\./,
      'cal',
    ],
    [kinds, 'Bea: team agm', 'Cal: I reckon lithium', 'Dot: your call bot', /^Cal is right\./, 'cal'],
    [
      sources,
      'Bea: solar',
      'Cal: alternator',
      "Dot: who's right then",
      /^Cal is right\..*\nBea says solar; Cal says alternator\./,
      'cal',
    ],
    [
      sources,
      "Bea: my money's on the panel",
      'Cal: driving, easy',
      'Bea: bot?',
      /^Cal is right\..*\nYou say solar; Cal says alternator\./,
      'cal',
    ],
    [
      weekend,
      'Bea: no chance',
      'Cal: easy',
      'Ann: bot?',
      /^Bea is right\. No: .*\nBea says no; Cal says yes\./,
      'bea',
    ],
    [
      weekend,
      'Bea: yeah nah',
      "Cal: she'll be right",
      'Cal: so who',
      /^Bea is right\..*\nBea says no; you say yes\./,
      'bea',
    ],
    [lasting, 'Bea: piece of cake', 'Cal: dream on', "Dot: who's right", /^Bea is right\. Yes/, 'bea'],
    [kettle, 'Bea: nah', 'Cal: yeah no worries', 'Dot: who is right?', /^Bea is right\. No/, 'bea'],
    [path, 'Bea: isolator', 'Cal: dcdc no question', 'Dot: so who is right?', /^Cal is right\. DC-DC/, 'cal'],
  ])('%j', ([asked, one, other, call, says, closest]) => {
    const { answers } = chat([asked, one, other, call]);
    expect(answers.slice(1, 3).map(({ text }) => text)).toEqual(['', '']);
    expect(answers[3]).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
    expect(answers[3]?.figures.closest?.value).toBe(closest);
  });

  test.for<[turns: Turn[], says: RegExp]>([
    [[weekend, "Bea: wrong bot, it'll be fine"], /^I stand by my answer\. No/],
    [[weekend, 'Bea: nah bot, easy'], /^I stand by my answer\. No/],
    [[kinds, 'Bea: wrong bot, agm'], /^I stand by my answer\. Lithium.*\nYou say AGM\./],
    [[weekend, 'Bea: no chance', 'Cal: no way', 'Dot: bot?'], /^Bea and Cal are right\. No/],
    [[kinds, 'Bea: agm', 'Cal: gel', 'Dot: bot?'], /^None of you, by what I know\. Lithium/],
  ])('also one against the bot, or all of one mind: %j', ([turns, says]) => {
    expect(chat(turns).last).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
  });

  test('told of others in one message', () => {
    const { last } = chat([
      weekend,
      'Bea: lovely night',
      "Dot: Bea says it'll last and Cal reckons no chance, who's right?",
    ]);
    expect(last.text).toMatch(/^Cal is right\. No: .*\nBea says yes; Cal says no\./);
  });

  test('where the answer takes no side, neither does the bot', () => {
    const { last } = chat(['Ann: agm or lithium?', 'Bea: lithium', 'Cal: agm', 'Dot: bot?']);
    expect(last.text).toMatch(/^That is not for me to call\..*\nBea says lithium; Cal says AGM\./);
    expect(last.figures.closest).toBeUndefined();
  });
});

describe('what takes no side', () => {
  test.for([
    'lovely sunset',
    'yeah right',
    'no idea',
    'no I left the esky at home',
    'yeah I brought the sausages',
    'never mind',
    'easy tiger',
  ])('"%s" after a question of yes or no', text => {
    const { memory } = chat([weekend, `Bea: ${text}`]);
    expect(memory.claims).toEqual([]);
  });

  test.for([
    'the lithium died last year',
    'got any sun cream',
    'my lithium is here',
    'agm or lithium, who cares',
    'not lithium',
  ])('"%s" after a choice', text => {
    expect(choiceIn('chemistry', text.split(/[ ,]+/))).toBeUndefined();
    expect(choiceIn('source', text.split(/[ ,]+/))).toBeUndefined();
  });

  test('a question asked by its own asker is turned and not argued about', () => {
    expect(chat([kinds, 'Ann: what if gel']).last.intent).not.toBe('settle');
    expect(chat([kinds, 'Ann: what if gel']).memory.claims).toEqual([]);
  });

  test.for<[text: string, says: 'yes' | 'no' | undefined]>([
    ['not a hope in hell mate', undefined],
    ['no hope in hell mate', 'no'],
    ['should do', 'yes'],
    ['yes it will', 'yes'],
    ['nah it wont', 'no'],
    ['it will not', 'no'],
    ['yes no', undefined],
  ])('%s', ([text, says]) => {
    expect(yesOrNo(text.split(' '))).toBe(says);
  });
});

describe('claims of a number', () => {
  const howLong: Turn = 'Ann: 100Ah agm, fridge 2A average, how long will it last?';
  const panel: Turn = 'Ann: what panel do I need for 40Ah a day, 5 sun hours?';
  test.for<[turns: Turn[], claims: (readonly [string, number, string])[]]>([
    [[howLong, 'Bea: I say 30 h', 'Bea: change mine to 8h'], [['bea', 8, 'h']]],
    [
      [howLong, 'Bea: I say 30 h', 'Cal: 12h I reckon', 'Bea: I now say 8'],
      [
        ['cal', 12, 'h'],
        ['bea', 8, 'h'],
      ],
    ],
    [[howLong, 'Bea: I say 30 h', 'Bea: make mine 2 days'], [['bea', 2, 'days']]],
    [[howLong, 'Bea: I say 30 h', 'Bea: put me down for 20'], [['bea', 20, 'h']]],
    [[panel, 'Bea: I say 160', 'Bea: change mine to 200W'], [['bea', 200, 'W']]],
  ])('is changed by whoever made it: %j', ([turns, claims]) => {
    const { memory } = chat(turns);
    expect(
      memory.claims.map(claim => ('value' in claim ? [claim.who, claim.value, claim.unit] : claim)),
    ).toEqual(claims);
  });

  test.for<[turns: Turn[], says: RegExp]>([
    [[panel, 'Bea: I say 160', 'Cal: 300 I reckon', 'Dot: bot?'], /^Bea is closest: .* W /],
    [[howLong, 'Bea: I say 30', 'Cal: 60 I reckon', 'Dot: so who?'], /^Bea is closest: it lasts about 25 h/],
    [
      ['Ann: what fuse for a 20A pump on 4mm2?', 'Bea: 25', 'Cal: 60', 'Dot: bot?'],
      /^Bea is closest: it wants a fuse of about 25 A/,
    ],
  ])('has the unit of the question: %j', ([turns, says]) => {
    expect(chat(turns).last).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
  });
});

describe('a dispute stays open', () => {
  const howLong: Turn = 'Ann: 100Ah agm, fridge 2A average, how long will it last?';
  const other: Turn = 'Dot: 200Ah lithium, 3A fridge average, will it last 4 days?';
  test('while others chat and ask, until it is settled', () => {
    const { last } = chat([
      howLong,
      'Bea: 30 h easy',
      'Cal: nah 12h easy',
      other,
      'Eli: lovely sunset',
      'Fay: what cable for 20A over 4 m?',
      'Gus: what fuse for a 30A pump?',
      'Hal: 100Ah agm at 12.2V, how full is it?',
      'Ivy: 60W at 12V in amps?',
      'Jed: how long to charge 100Ah agm from 50% with 20A?',
      'Cal: bot?',
    ]);
    expect(last.text).toMatch(/^Bea is closest: it lasts about 25 h/);
  });

  test('and each who argues is told of their own', () => {
    const turns: Turn[] = [
      howLong,
      'Bea: 30 h easy',
      'Cal: nah 12h easy',
      other,
      'Eli: easy',
      'Fay: no chance',
    ];
    expect(chat([...turns, 'Cal: bot?']).last.text).toMatch(/^Bea is closest/);
    expect(chat([...turns, 'Fay: bot?']).last.text).toMatch(/^You are right\. No/);
    expect(chat([...turns, 'Dot: bot?']).last.text).toMatch(/^Fay is right\. No/);
  });

  test('what was claimed of one question is no claim of another', () => {
    const { last } = chat([
      howLong,
      'Bea: I say 30 h',
      other,
      'Eli: I say 3 days',
      'Fay: 9 days I reckon',
      'Dot: bot?',
    ]);
    expect(last.text).not.toMatch(/Bea/);
  });

  test('until it is old', () => {
    const { memory } = chat([howLong, 'Bea: I say 30 h', 'Cal: nah 12 h']);
    const { last } = talk(['Cal: bot?'], { memory, at: '2026-01-16T09:00:00Z' });
    expect(last.figures).toEqual({});
    expect(last.text).not.toMatch(/Bea|30 h|12 h/);
  });

  test('in the unit that fits: hours are claimed of how long, though a panel was asked of since', () => {
    const { last } = chat([
      howLong,
      'Dot: what panel for 40Ah a day, 5 sun hours?',
      'Bea: I say 30 h',
      'Cal: I say 60 h',
    ]);
    expect(last.text).toMatch(/^Bea is closest: it lasts about 25 h/);
  });
});
