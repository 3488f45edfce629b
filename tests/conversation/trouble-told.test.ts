import { expect, test } from 'vitest';
import { talk } from './talk.ts';

test.for<[line: string, intent: string]>([
  ['it wont charge off the solar today', 'fault'],
  ['panel makes nothing', 'fault'],
  ['solar not charging', 'fault'],
  ['the fridge was good last night', 'none'],
  ['no rain today they say', 'none'],
])('a trouble told by its signs is looked into, talk is left alone: %s', ([line, intent]) => {
  expect(talk([`ann: ${line}`], { kind: 'private' }).last.intent).toBe(intent);
});
