import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { hear } from '#conversation/hear.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { why } from '#conversation/why.ts';
import { read } from '#language/reading.ts';
import { talk, value } from './talk.ts';

const at = new Date('2026-01-15T09:00:00Z');
const anns = 'ann: 5A fan on a 100Ah agm, how long will it last?' as const;
const bobs = 'bob: fridge 1.2A average, 120Ah lithium, how long will it last?' as const;

describe('whose question', () => {
  test('a whole question takes nothing from somebody else’s', () => {
    const { last } = talk([anns, bobs]);
    expect(value(last, 'dailyUse')).toBeCloseTo(28.8, 1);
    expect(last.text).not.toMatch(/Ann/);
  });

  test('a turn leans on one’s own question before the chat’s', () => {
    const { last } = talk([anns, bobs, 'ann: what if the battery is lithium']);
    expect(value(last, 'dailyUse')).toBeCloseTo(120, 0);
    expect(value(last, 'usableCapacity')).toBeCloseTo(80, 0);
  });

  test('who has asked nothing turns the chat’s last, and is told whose that was', () => {
    const { last } = talk([anns, bobs, 'cyn: what if the battery is agm']);
    expect(value(last, 'dailyUse')).toBeCloseTo(28.8, 1);
    expect(last.text).toMatch(/From Bob's question: .*fridge 1\.2 A/);
  });

  test('a reply turns the question replied to, whosever it is', () => {
    const { memory } = talk([anns, bobs]);
    const onto = present(memory.frames.find(frame => frame.from === 'ann'));
    const text = 'what if the battery is lithium';
    const { answer } = converse(memory, { chat: 'camp', from: 'bob', text, at, kind: 'group', onto });
    expect(value(answer, 'dailyUse')).toBeCloseTo(120, 0);
    expect(answer.text).toMatch(/From Ann's question/);
  });

  test('a few questions are kept, two of a person', () => {
    const { memory } = talk([anns, bobs, anns, anns, anns, bobs]);
    expect(memory.frames.map(frame => frame.from)).toEqual(['bob', 'ann', 'ann', 'bob']);
  });

  test('after half a day nothing is leant on', () => {
    const { memory } = talk([anns]);
    const { last } = talk(['ann: what if the battery is lithium'], { memory, at: '2026-01-16T09:00:00Z' });
    expect(last.figures).toEqual({});
  });
});

describe('a turn taken back', () => {
  const turn = 'ann: what if the battery is lithium' as const;
  test.each(['undo', 'oops, go back', 'put it back', 'scrap that'])('%s: the answer before it', text => {
    const { answers } = talk([anns, turn, `ann: ${text}`]);
    expect(present(answers[2]).figures).toEqual(present(answers[0]).figures);
    expect(present(answers[2]).intent).toBe('run-time');
  });
  test('only by who made it', () => {
    expect(talk([anns, turn, 'bob: undo']).last.figures).toEqual({});
  });
  test('a rig told after it is put back first', () => {
    const { answers, memory } = talk([anns, turn, 'ann: my rig: 100Ah agm', 'ann: undo']);
    expect(present(answers[3]).intent).toBe('rig');
    expect(memory.rigs.ann).toBeUndefined();
  });
});

describe('talk that asks nothing', () => {
  const say = (kind: 'private' | 'group') => {
    const { memory } = talk([anns]);
    return converse(memory, { chat: 'camp', from: 'ann', text: 'lol good one mate', at, kind }).answer;
  };
  test('is met with silence among people', () => {
    expect(say('group')).toMatchObject({ intent: 'none', text: '', figures: {} });
  });
  test('gets one friendly line in private, and never the answer again', () => {
    const { text, figures } = say('private');
    expect(text).toMatch(/^[^\n?]{3,40}$/);
    expect(figures).toEqual({});
  });
});

describe('a line of the bot’s own', () => {
  const hearing = (memory: Memory, from: string, text: string) =>
    converse(memory, { chat: 'camp', from, text, at, kind: 'group', ...(from === 'bot' && { isBot: true }) });
  test('is not answered, and what it asks stands open', () => {
    const { memory, answer } = hearing(emptyMemory(), 'bot', 'How big is your battery?');
    expect(answer).toMatchObject({ intent: 'none', text: '' });
    expect(memory.talk?.asked).toEqual(expect.arrayContaining(['?', 'battery']));
  });
});

describe('two readings', () => {
  const options = [
    {
      say: '10 h a day',
      intent: 'run-time',
      facts: { loads: [{ name: 'fan', currentA: 2, hoursPerDay: 10 }] },
    },
    {
      say: '10 h in all',
      intent: 'run-time',
      facts: { loads: [{ name: 'fan', currentA: 2 }], durationH: 10 },
    },
  ] as const;
  const asked = (): Memory => ({
    ...emptyMemory(),
    choice: { at: at.getTime(), options: structuredClone(options) as never },
    frames: [
      {
        intent: 'run-time',
        facts: { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] },
        claims: [],
        from: 'kim',
        at: at.getTime(),
        asked: [],
      },
    ],
  });
  test.each([
    ['10 h a day', 20, null],
    ['10 h in all', 48, 'yes'],
  ] as const)('the one chosen, “%s”, is gone by', (say, dailyUseAh, verdict) => {
    const { last } = talk([`kim: ${say}`], { memory: asked() });
    expect(last.intent).toBe('run-time');
    expect(value(last, 'dailyUse')).toBeCloseTo(dailyUseAh, 1);
    expect(last.verdict).toBe(verdict);
  });
});

describe('why', () => {
  const text = 'fridge 1.2A, 100Ah for $300, 3 days?';
  const lines = why(read(text)).split('\n');
  test('names each mention with its class, its span and what it was taken for', () => {
    expect(lines).toContain('  “1.2” (A, 7–11): load.currentA of “fridge”');
    expect(lines.join('\n')).toMatch(/“300” \(money, \d+–\d+\): nothing of the question/);
    expect(text.slice(7, 11)).toBe('1.2A');
  });
  test('tells readings by probability, and numbers in no fact', () => {
    expect(lines[0]).toMatch(/^Taken for run-time, \d+ % sure\.$/);
    expect(lines.join('\n')).toMatch(/In no fact:\n {2}“300”: a price/);
    expect(why(hear(emptyMemory(), { chat: 'c', from: 'kim', text: '/help', at, kind: 'group' }))).toMatch(
      /command/,
    );
  });
});

describe('side talk after an answer', () => {
  test.each(['ta', 'pfff', 'oh good', 'cheers mate, that will do'])(
    '%s: silence, never the answer again',
    text => {
      const { last } = talk([anns, `ann: ${text}`]);
      expect(last).toMatchObject({ text: '', figures: {} });
    },
  );
  test('what asks for the answer another way is answered', () => {
    expect(talk([anns, 'ann: show the working']).last.figures.runTime).toBeDefined();
  });
  test('another person’s whole question takes nothing from one that waits', () => {
    const open = 'ann: what do I use a day with a fridge?' as const;
    const { last } = talk([open, 'bob: fan 2A 10 hours a day, what do I use a day?']);
    expect(last.text).not.toMatch(/fridge/i);
    expect(value(last, 'dailyUse')).toBeCloseTo(20, 0);
  });
});
