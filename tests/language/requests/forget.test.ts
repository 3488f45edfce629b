import { describe, expect, test } from 'vitest';
import { forgetRequest, isForgetRequest } from '#language/requests/forget.ts';
import { notRequests, requests } from './forget-words.ts';

test('there are 300 messages that wipe nothing and 40 plain requests', () => {
  expect(new Set(notRequests).size).toBeGreaterThanOrEqual(300);
  expect(requests).toHaveLength(40);
});

test('none of them wipes anything', () => {
  expect(notRequests.filter(text => isForgetRequest(text))).toEqual([]);
});

describe('plain requests are understood, with what and whose', () => {
  test.for([...requests])('%s', ([text, which, owner]) => {
    expect(forgetRequest(text)).toEqual(owner === undefined ? { which } : { which, owner });
  });
});

test('nonsense asks nothing', () => {
  for (const text of ['', 'forget', 'delete', '...', 'a'.repeat(4000), 'forget '.repeat(500)])
    expect(isForgetRequest(text)).toBe(false);
});
