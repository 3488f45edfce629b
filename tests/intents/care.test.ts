import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Aside, answerAside, asideIn } from '#intents/asides.ts';
import { judgedAsides } from '#intents/fault/judged-table.ts';
import { mishapAsides } from '#intents/fault/mishaps-table.ts';
import { symptoms } from '#intents/fault/symptoms-table.ts';
import { spotted } from '#intents/spotting.ts';
import { plainQuestionIn } from '#intents/term/plain/plain-questions.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { misfits } from './beside.ts';

test.for([
  ['mishaps', mishapAsides],
  ['judged', judgedAsides],
] as const)(
  '%s: each has a name of its own, a first line that a phone shows whole, and few lines more',
  ([, rows]) => expect(misfits(rows, { lines: 3, letters: 600 })).toEqual([]),
);

test.for([
  ['may I fill the cells up with rain water', 'tap-water-in-it'],
  ['how often must I check the water in the cells', 'top-up-water'],
  ['is a second hand lithium worth buying', 'used-lithium'],
  ['could the battery stay in the caravan over the winter', 'home-for-winter'],
  ['can I leave it plugged in all winter', 'plugged-in-for-months'],
  ['what torque do the lugs want', 'torque'],
  ['does the battery have to be strapped in', 'tie-it-down'],
  ['how can I tell whether the panel is charging it', 'is-it-charging'],
  ['what is an anderson rated for', 'two-pole-rating'],
  ['is it true that lithium catches fire', 'lithium-and-fire'],
  ['is soh the same as how full it is', 'health-or-charge'],
  ['what does c20 mean', 'hour-rate'],
  ['100Ah lithium, fridge 2A, how many hours', undefined],
] as const)('“%s” asks %s', ([text, name]) =>
  expect(plainQuestionIn({ recognised: recognise(text) })?.name).toBe(name),
);

const fault: readonly Aside[] = [...mishapAsides, ...judgedAsides];
test.for([
  ['can I bypass the bms just this once', 'round-the-bms'],
  ['a rat has chewed the wire', 'chewed-cable'],
  ['one of the two batteries is warm and the other stays cold', 'one-battery-warm'],
  ['the charger gets warm and its fan runs, normal?', 'charger-warm'],
  ['my monitor has gone blank', 'monitor-blank'],
  ['the pump won’t start', undefined],
] as const)('beside a fault, “%s” asks %s', ([text, name]) =>
  expect(asideIn(recognise(text).words, fault)?.name).toBe(name),
);

test.for([
  ['the fridge says low battery but the battery is full', 'says-low-though-full'],
  ['it only works when I wiggle the plug', 'loose-contact'],
  ['the bms trips when the kettle goes on', 'bms-overload'],
  ['one lamp flickers, the others are fine', 'only-one-of-them'],
  ['the pump hums but no water comes', 'pump-dry'],
] as const)('“%s” is %s', ([text, name]) =>
  expect(spotted(recognise(text).words, symptoms, ({ spots }) => spots)?.name).toBe(name),
);

test('volts that an alternator gives are judged', () => {
  const row = present(judgedAsides.find(({ name }) => name === 'alternator-volts'));
  expect(answerAside(row, { volts: 14.2 } as never).headline).toMatch(/^Yes, 14\.2 V is right/);
  expect(answerAside(row, { volts: 13.1 } as never).headline).toMatch(/^No, 13\.1 V is too little/);
});
