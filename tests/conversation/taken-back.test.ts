import { describe, expect, test } from 'vitest';
import { isUndoing } from '#conversation/turns/requests.ts';
import { talk, value } from './talk.ts';

describe('a change is taken back by', () => {
  test.for([
    'undo',
    'oops, undo that please',
    "oh dear, please undo what i've just told you",
    'discard my last change',
    'put it back how it was',
    'scrap the last one, put that back',
  ])('%s', text => {
    expect(isUndoing(text)).toBe(true);
  });

  test.for(['undo the strap', 'put the fan back', 'go back to camp', 'it was as before the storm', ''])(
    'not by: %s',
    text => {
      expect(isUndoing(text)).toBe(false);
    },
  );
});

describe('after "what if", the answer before comes back by', () => {
  test.for([
    'go back one step',
    'scrap that last one, put it back how it was',
    'have it the way it was before',
  ])('%s', text => {
    const { answers, last } = talk([
      'jo: 100Ah lithium, 40Ah a day, how long?',
      'jo: and if it was 200Ah?',
      `jo: ${text}`,
    ]);
    expect(value(last, 'runTime')).toBe(value(answers[0] ?? last, 'runTime'));
  });
});
