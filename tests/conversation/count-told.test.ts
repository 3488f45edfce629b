import { expect, test } from 'vitest';
import { type Turn, talk } from './talk.ts';

test.for<[line: Turn, solar: object[]]>([
  ['Sid: mine only does 3 and its a 100w', [{ powerW: 100 }]],
  ["Sid: mine never does more than 4 and it's a 120 watt", [{ powerW: 120 }]],
  ["Sid: only 5 today and that's the 160w", [{ powerW: 160 }]],
  ['Sid: mine did 6 at lunch with the 160w panel', [{ powerW: 160 }]],
  ['Sid: i have 2 100w panels', [{ count: 2, powerW: 100 }]],
  ['Sid: running three 100w panels here', [{ count: 3, powerW: 100 }]],
  ['Sid: my 2 panels are 100w each', [{ count: 2, powerW: 100 }]],
])('what a panel gives is no count of panels: %j', ([line, solar]) => {
  expect(talk([line]).memory.rigs.sid?.solar).toEqual(solar);
});
