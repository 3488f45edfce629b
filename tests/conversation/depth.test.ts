import { describe, expect, test } from 'vitest';
import { type Turn, talk } from './talk.ts';

const chat = (turns: readonly Turn[], kind: 'group' | 'private' = 'group') =>
  talk(turns, { apartMin: 1, kind });

describe('how far down a battery may be taken is claimed and settled by its kind', () => {
  test.for<[turns: Turn[], says: RegExp]>([
    [
      [
        'Dan: reckon you can use 80% of an agm no worries',
        'Meg: nah half at most',
        "Dan: who's right billywatt?",
      ],
      /^Meg is right: about half of an AGM/,
    ],
    [
      ['Rob: you can take a gel down to 20% no dramas', 'Kel: never below half mate', "Rob: who's right"],
      /^Kel is right: about half of a gel battery/,
    ],
    [
      ['Cam: with lithium you can use 90%', 'Dee: nah 50% is the limit', 'Cam: settle it'],
      /^You are right: about 80 % of a lithium/,
    ],
    [
      ['Pip: agms are fine run down to 30 percent', 'Mo: no way, 50 is the floor', 'Al: bot?'],
      /^Mo is right/,
    ],
    [
      ['Ken: you can run a lithium totally flat', "Lee: i'd keep 20% in it", "Mia: who's right bot?"],
      /^Lee is right: about 80 % of a lithium/,
    ],
    [
      ['Hal: 80% of a lead acid is usable i reckon', 'Ivy: half if you want it to last', 'Jan: bot?'],
      /^Ivy is right: about half of a lead-acid/,
    ],
    // A kind that nobody named: each is right of one.
    [
      ['Sue: never go below half on a battery', "Ian: rubbish, been doing it 20 years. who's right?"],
      /^Sue is right of lead-acid and AGM, you of lithium\./,
    ],
    [
      [
        'Ian: A 100Ah battery gives you 100Ah, you can use the lot',
        'Sue: not on a lead acid you cant, half at most',
        "Ian: rubbish, been doing it 20 years. who's right?",
      ],
      /^Sue is right of lead-acid and AGM, you of lithium\./,
    ],
    // Told in one line, and after the bot was asked.
    [['Yan: Tess says i can use 80% of my agm, dad says 50. who’s right?'], /^Your dad is right/],
    [['Tess: how far can i run my agm down?', 'Una: 80% easy', 'Vic: half', "Tess: who's right"], /^Vic is/],
    // A share that is quoted is nobody's own.
    [
      ['Sal: dont go below 50 on an agm', 'Ned: rubbish, 50% is way too careful', 'Al: bot?'],
      /^Sal is right: about half of an AGM/,
    ],
  ])('%j', ([turns, says]) => {
    const { answers, last } = chat(turns);
    expect(last).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
    expect(last.text).not.toMatch(/I need|volts it reads/);
    const claims = turns.slice(0, -1).map((turn, i) => (turn.includes('?') ? '' : answers[i]?.text));
    expect(claims.filter(Boolean)).toEqual([]);
  });

  test('is no setting of a battery', () => {
    const { last } = chat([
      'Dan: reckon you can use 80% of an agm no worries',
      'Dan: AGM or lithium for 100 Ah?',
    ]);
    expect(last.text).toMatch(/80 Ah .*against 50 Ah/);
  });

  test('alone with the bot gets one line', () => {
    const { last } = chat(['Dan: reckon you can use 80% of an agm no worries'], 'private');
    expect(last.text).toMatch(/^Not as a habit: about half of an AGM/);
  });

  test('asked about it has a yes or no', () => {
    expect(chat(['Wyn: is it ok to go down to 20% on an agm']).last.text).toMatch(/^Not as a habit/);
    expect(chat(['Wyn: can i run a lithium down to 20%?']).last.text).toMatch(/^Yes: about 80 %/);
  });

  test.for([
    'Gus: 100ah agm at 50%, fridge 2A, how long?',
    'Gus: charge the agm to 80 percent',
    'Gus: it reads 12.2V, agm, is that half?',
  ] as Turn[])('what is no claim of it stays what it was: %j', turn => {
    expect(chat([turn]).last.intent).not.toBe('settle');
    expect(chat([turn]).memory.claims).toEqual([]);
  });
});
