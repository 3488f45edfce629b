import { describe, expect, test } from 'vitest';
import { type Turn, talk } from './talk.ts';

const told: readonly Turn[] = [
  'Wal: i have a 120Ah agm and 160w solar',
  'Deb: i have a 200Ah lithium and a 300w panel, fridge 1.2A average',
  'Jo: my rig: 100Ah lithium, 200w solar, fridge 45w',
];

describe('what a chat was told of gear is said with the name, and nothing worked out of it', () => {
  test.for<[asked: Turn, says: RegExp]>([
    ["Jo: who's got the 200 Ah?", /^Deb: 200 Ah lithium\.$/m],
    ['Jo: whose panel is biggest', /^Deb’s: 300 W solar\.\nYou: 200 W solar\. Wal: 160 W solar\./],
    ['Jo: who has the smallest solar?', /^Wal’s: 160 W solar\./],
    ['Jo: what did I tell you about my fridge', /^You told me: fridge 45 W\./],
    ['Deb: what did i tell you my battery was?', /^You told me: 200 Ah lithium\./],
    ['Jo: what battery has deb got', /^Deb’s, as I was told: 200 Ah lithium\./],
    ["Jo: how big was wal's solar again?", /^Wal’s, as I was told: 160 W solar\./],
    ["Jo: remind me what wal's battery is", /^Wal’s, as I was told: 120 Ah AGM\./],
    ["Jo: what do you know about deb's fridge?", /^Deb’s, as I was told: fridge 1\.2 A on average\./],
    ['Jo: who runs agm', /^Wal: 120 Ah AGM\.$/m],
    ['Jo: does anyone have lithium?', /^(?:Deb and you|You and Deb)\.\n/i],
    ['Jo: has wal got an inverter?', /^Wal hasn’t told me of that\.\nWhat I know: 120 Ah AGM; 160 W solar\./],
  ])('%j', ([asked, says]) => {
    const { last, memory } = talk([...told, asked], { apartMin: 1 });
    expect(last).toMatchObject({ intent: 'rig', text: expect.stringMatching(says) });
    expect(last.figures.runTime).toBeUndefined();
    expect(memory.rigs).toEqual(talk(told, { apartMin: 1 }).memory.rigs);
  });

  test.for<Turn>([
    'Jo: who lasts longest?',
    'Jo: what battery do I need for a 45 W fridge?',
    'Jo: how long will the 200 Ah last?',
    "Jo: how long will deb's fridge run?",
  ])('a sum stays one: %j', asked => {
    expect(talk([...told, asked], { apartMin: 1 }).last.intent).not.toBe('rig');
  });

  test('somebody’s medical device is told first, with its caution', () => {
    const { last } = talk(['Wal: my cpap uses 30 Ah a night', 'Jo: what did wal say his cpap used?']);
    expect(last.text).toMatch(/^Wal’s, as I was told: cpap 30 Ah a day\./);
    expect(last.text).toMatch(/fallback/);
  });
});
