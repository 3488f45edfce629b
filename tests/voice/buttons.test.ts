import { expect, test } from 'vitest';
import { draws } from '../house/share.ts';
import { type Pressed, press, useless } from './pressed.ts';

const talks = draws(150, 2000);

test('every button brings an answer, another one, and takes no caution away', { timeout: 900_000 }, () => {
  let pressed = 0;
  const bad: string[] = [];
  const intents = new Set<string>();
  for (const press_ of press(talks, 7)) {
    pressed++;
    intents.add(press_.shown.intent);
    const why = useless(press_);
    if (why) bad.push(`${press_.turns.join(' | ')} [${press_.button}]: ${why}`);
  }
  expect(bad).toEqual([]);
  expect(pressed).toBeGreaterThan(talks);
  expect(intents.size).toBeGreaterThan(20);
});

test('a button that repeats, asks back or drops a caution is seen', () => {
  const shown = { intent: 'trip', text: 'Yes.', figures: { runTime: {} }, cautions: ['a'], next: [] };
  const pressed = (answer: object) =>
    useless({ turns: [], shown, button: 'and flat?', answer: { ...shown, ...answer } } as unknown as Pressed);
  expect(pressed({})).toMatch(/repeats/);
  expect(pressed({ intent: 'unclear' })).toMatch(/no power question/);
  expect(pressed({ text: 'To work that out I need a battery.' })).toMatch(/asks/);
  expect(pressed({ text: 'No.', cautions: [] })).toMatch(/caution away/);
  expect(pressed({ text: 'No.' })).toBeUndefined();
});
