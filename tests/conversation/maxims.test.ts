import { describe, expect, test } from 'vitest';
import { settleAsides } from '#intents/settle/asides-table.ts';
import { maximIn, wayOf } from '#intents/settle/maxims.ts';
import { maxims } from '#intents/settle/maxims-table.ts';
import { type Turn, talk } from './talk.ts';

const chat = (turns: readonly Turn[], kind: 'group' | 'private' = 'group') =>
  talk(turns, { apartMin: 1, kind });

describe('two people hold opposite things of the trade', () => {
  test.for<[one: Turn, other: Turn, call: Turn, says: RegExp]>([
    [
      'Wal: you only ever get half out of a leisure battery',
      "Deb: nah, not if it's lithium, you get the lot",
      "Wal: so who's right, bot?",
      /^You are right of lead-acid and AGM, Deb of lithium\./,
    ],
    [
      'Ann: concrete drains a battery',
      'Bob: old wives tale',
      'Cal: bot?',
      /^Bob is right\. Concrete doesn’t/,
    ],
    ['Ann: concrete drains a battery', 'Bob: yep it does', 'Cal: bot?', /^No, Ann and Bob aren’t right\./],
    [
      'Ann: you can tell a lithium by its volts',
      "Bob: nah you can't",
      "Cal: who's right?",
      /^Bob is right\. A lithium’s volts/,
    ],
    // "You can" is against who says that one can't.
    [
      "Ann: you can't tell the charge of lithium by voltage",
      'Bob: course you can',
      "Cal: who's right?",
      /^Ann is right\. A lithium’s volts/,
    ],
    [
      "Ann: lithium can't be charged by an alternator",
      'Bob: yes it can, with a dcdc',
      'Ann: bot who is right?',
      /^Bob is right\. It can, through a DC-DC/,
    ],
    [
      'Ann: two batteries in series gives you twice the amp hours',
      'Bob: rubbish, it only doubles the volts',
      'Cal: settle it bot',
      /^Bob is right\. .*in series the volts add up/,
    ],
    [
      'Ann: PWM is fine with any panel',
      'Bob: no, pwm needs a 12v panel',
      'Cal: bot?',
      /^Bob is right\. A PWM wants a 12 V panel/,
    ],
    // A condition denies nothing.
    [
      'Ann: batteries get a memory if you dont run them down',
      'Bob: thats nicads',
      "Ann: so who's right bot",
      /^Bob is right\. Neither/,
    ],
    [
      'Ann: an inverter draws nothing when idle',
      'Bob: it always draws something',
      "Ann: bot, who's right?",
      /^Bob is right\. An inverter that is on/,
    ],
  ])('%j', ([one, other, call, says]) => {
    const { answers } = chat([one, other, call]);
    expect(answers[1]?.text).toBe('');
    expect(answers[2]).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
  });

  test('who is right of the two is the closest', () => {
    const { last } = chat(['Ann: concrete drains a battery', 'Bob: old wives tale', 'Cal: bot?']);
    expect(last.figures.closest?.value).toBe('bob');
  });

  test('asked why, it is told again and not asked back', () => {
    const { last } = chat(['Ann: concrete drains a battery', 'Bob: no way', 'Cal: bot?', 'Cal: why?']);
    expect(last.text).toMatch(/Concrete doesn’t drain/);
  });

  test('a question asked since is what "bot?" is about', () => {
    const { last } = chat([
      'Ann: concrete drains a battery',
      'Bob: no way',
      'Cal: how long will a 100Ah agm run a 1.5A fridge?',
      'Bob: no chance it does 2 days',
      'Cal: who is right?',
    ]);
    expect(last.text).not.toMatch(/[Cc]oncrete/);
  });
});

describe('one claim is asked about', () => {
  test.for<[asked: Turn, says: RegExp, verdict: string | null]>([
    [
      'Ann: my brother in law says panels make nothing under cloud, is that right?',
      /^No, your brother in law isn’t right\. They do work/,
      'no',
    ],
    ['Ann: thicker cable makes it use more power, true or rubbish?', /^No\. Thicker cable uses less/, 'no'],
    ['Ann: is it true that leaving a battery on concrete drains it?', /^No\. Concrete doesn’t/, 'no'],
    ['Ann: an empty fridge uses more than a full one, right or wrong?', /^Yes\. Full of cold things/, 'yes'],
    [
      'Ann: my old man swears cement floors flatten batteries. true?',
      /^No, your old man isn’t right\./,
      'no',
    ],
    [
      'Ann: parallel panels are better in shade, my mate reckons. is that right?',
      /^Your mate is right\. In part shade/,
      'yes',
    ],
    // "A month" is no figure of a rig.
    [
      'Ann: my uncle says a battery left flat for a month is fine, is he right?',
      /^No, your uncle isn’t right\. Left flat/,
      'no',
    ],
    // A danger is told first.
    [
      "Ann: is that right that you mustn't charge lithium below freezing?",
      /^Don’t charge lithium at or below 0/,
      null,
    ],
    ['Ann: bob says lithium burns vans down, cal says its safer than a phone. bot?', /^Cal is right\./, null],
  ])('%j', ([asked, says, verdict]) => {
    const { last } = chat([asked]);
    expect(last).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
    if (verdict !== null) expect(last.verdict).toBe(verdict);
  });

  test('in private too', () => {
    const { last } = chat(['Ann: concrete drains a battery, true?'], 'private');
    expect(last.text).toMatch(/^No\. Concrete/);
  });

  test('figures of a rig or of a claim are settled by the sum', () => {
    const { last } = chat([
      'Ann: lithium at rest shows 13.1 volts. Drew figures 70%, Sky 40%. Who is closest?',
    ]);
    expect(last.text).not.toMatch(/hardly move/);
  });
});

describe('the table', () => {
  test('each row says something by itself, or by a row of what is commonly known', () => {
    for (const { name, says, why, aside } of maxims) {
      const row = settleAsides.find(one => one.name === aside);
      expect([name, typeof (says ?? row?.says), why !== undefined || row?.lines !== undefined]).toEqual([
        name,
        'string',
        true,
      ]);
    }
    expect(new Set(maxims.map(({ name }) => name)).size).toBe(maxims.length);
  });

  test('what depends tells of what each side is right', () => {
    for (const { name, isSo, holdsOf } of maxims)
      expect([name, isSo === 'depends']).toEqual([name, !!holdsOf]);
  });

  test.for([
    ['concrete drains batteries', 'concrete-drains', 'yes'],
    ['batteries are fine on concrete', 'concrete-drains', 'no'],
    ['a fuse protects the cable not the fridge', 'fuse-protects', 'no'],
    ['solar makes nothing when its overcast', 'panels-under-cloud', 'yes'],
    ['a bigger inverter uses more even with the same kettle', 'bigger-inverter-uses', 'yes'],
    ['lithium wants keeping full', 'lithium-kept-full', 'no'],
    ['solar still makes some when its overcast', 'panels-under-cloud', 'no'],
  ])('%j', ([line = '', name, way]) => {
    const words = line.split(' ');
    const maxim = maximIn(words);
    expect([maxim?.name, maxim && wayOf(maxim, words)]).toEqual([name, way]);
  });
});
