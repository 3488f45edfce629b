import { describe, expect, test } from 'vitest';
import type { Heard } from '#conversation/hear.ts';
import { secondAsked } from '#conversation/turns/twofold.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { talk } from './talk.ts';

/** A message as a reader torn between two questions of the same facts hears it. */
const torn = (text: string, second = 0.3, otherFacts = {}) =>
  secondAsked({
    recognised: recognise(text),
    intent: 'solar-size',
    options: [
      { intent: 'solar-size', stated: {}, probability: 1 - second },
      { intent: 'battery-size', stated: otherFacts, probability: second },
    ],
  } as unknown as Heard);

describe('a message that asks twice has both for an answer', () => {
  test.each([
    'what panel and what battery for a fridge',
    'how big a battery & which panel',
    'which panel and how much battery',
  ])('%s', text => expect(torn(text)).toBe('battery-size'));

  test.each(['what panel for the fridge and the fan', 'a panel and how?'])('%s asks once', text =>
    expect(torn(text)).toBeUndefined(),
  );

  test('a question that is hardly likely is not meant, nor one of other facts', () => {
    expect(torn('what panel and what battery', 0.1)).toBeUndefined();
    expect(torn('what panel and what battery', 0.3, { durationH: 24 })).toBeUndefined();
  });
});

describe('two answers in one message', () => {
  const { last } = talk(['una: what wire AND what fuse for a 20A load 15ft away from the battery']);

  test('both figures are there, the first question first', () => {
    expect(last.intent).toBe('cable-size');
    expect(last.figures).toMatchObject({
      conductorArea: { unit: 'mm²' },
      fuseRating: { value: 25, unit: 'A' },
    });
  });

  test('no line stands twice, and blank lines only between the two', () => {
    const lines = last.text.split('\n').filter(Boolean);
    expect(new Set(lines).size).toBe(lines.length);
    expect(last.text).not.toMatch(/\n{3}/);
    expect(last.text.match(/Fuse the cable at the battery end/g)).toHaveLength(1);
  });

  test('what one of the two counts is not called left out by the other', () => {
    const both = talk([
      'una: what size battery AND what size solar for a 1.5a fridge, 3 days at moreton in september, lithium',
    ]).last;
    expect(Object.keys(both.figures)).toEqual(expect.arrayContaining(['panelPower', 'batteryCapacity']));
    expect(both.text).not.toContain('Not counted');
  });
});
