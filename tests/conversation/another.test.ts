import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

const lasting = 'deb: 120Ah lithium, fridge 45W average, how long will it last?' as const;
const enough = 'mo: 100W panel, fridge 30Ah a day, enough in cornwall in october?' as const;

describe('one more of what a question counts', () => {
  test.each([
    'what if we add another battery the same',
    'and with a second battery the same?',
    'and if we double the battery',
    'and another battery like it',
    'what if i had an extra battery',
  ])('%s', say => {
    expect(talk([lasting, `deb: ${say}`]).last.text).toMatch(/A 240 Ah lithium gives you/);
  });

  test.each(['what if we got a second panel same as it', 'and with another panel?'])('%s', say => {
    expect(talk([enough, `mo: ${say}`]).last.text).toMatch(/Your 200 W puts back/);
  });

  test('counts on from there', () => {
    const { last } = talk([lasting, 'deb: and with a second battery the same?', 'deb: and another battery?']);
    expect(last.text).toMatch(/A 360 Ah lithium gives you/);
  });
});

describe('is none', () => {
  test('where it has a size of its own', () =>
    expect(talk([lasting, 'deb: and another 100Ah battery?']).last.text).toMatch(/A 220 Ah lithium/));

  test.each(['do I need a second battery', 'and how do I charge a second battery?'])('in %s', say =>
    expect(talk([lasting, `deb: ${say}`]).last.text).not.toMatch(/240 Ah/),
  );
});
