import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { nameOf } from '#telegram/updates/people/people.ts';
import { alone, ann, buttonsOf, fridge, group, kim, labelsOf, sam, scene, textOf } from './rows/one-group.ts';

describe('names in any script stay whole', () => {
  test.each([
    ['Мария', 'Мария'],
    ['李小龍', '李小龍'],
    ['عبد الله', 'عبد الله'],
    ['می‌خواهم', 'می‌خواهم'],
    ['क्‍षेत्र', 'क्‍षेत्र'],
    ['Zoë', 'Zoë'],
    ['Zoe\u0308', 'Zoë'],
    ['Nguyễn Thị', 'Nguyễn Thị'],
    ['👨‍👩‍👧', '👨‍👩‍👧'],
    ['\u202eSam\u202c', 'Sam'],
    ['  Sam \n B ', 'Sam B'],
    ['\u3164', ''],
    ['\u200d\u200d', ''],
    ['__proto__', '__proto__.'],
  ])('%s', (first_name, name) => {
    expect(nameOf({ ...sam, first_name })).toBe(name);
  });
  test.each(['İ', '👨‍👩‍👧‍👦', 'é'.normalize('NFD'), 'क्‍ष', 'ß', '李'])(
    'a very long one of %s is cut between characters, and fits the memory in small letters too',
    async sign => {
      const name = nameOf({ ...sam, first_name: sign.repeat(64) });
      const whole = [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(name)].map(
        g => g.segment,
      );
      expect(new Set(whole)).toEqual(new Set([sign.normalize('NFC')]));
      const s = scene();
      await s.say('/rig 100Ah AGM', { from: { ...sam, first_name: sign.repeat(64) } });
      await s.say('/rig', { from: { ...sam, first_name: sign.repeat(64) } });
      expect(textOf(s.last())).toContain('100 Ah AGM');
      expect(s.errors()).toEqual([]);
    },
  );
});

test('a handle is its owner’s: "@ann_smith’s rig" is Ann’s', async () => {
  const s = scene();
  await s.say('/rig 100Ah AGM, fridge 1.2A', { from: ann });
  await s.say('/rig 200Ah lithium, fridge 2A', { from: kim });
  await s.say("/power show @Ann_Smith's rig", { from: kim });
  expect(textOf(s.last())).toMatch(/^Ann's rig: 100 Ah AGM/);
  await s.say("/power show @nobody_here's rig", { from: kim });
  expect(textOf(s.last())).not.toContain('100 Ah AGM');
  // Neither the handle nor the id is kept.
  expect(JSON.stringify((await s.store.load(String(group.id))).memory)).not.toMatch(/ann_smith|1003/i);
});

test('another of the same name has not the other’s handle', async () => {
  const s = scene();
  await s.say('/rig 100Ah AGM', { from: ann });
  await s.say('/rig 55Ah AGM', { from: { ...ann, id: 1004, username: 'ann_too', last_name: 'Birch' } });
  await s.say("/power show @ann_smith's rig", { from: kim });
  expect(textOf(s.last())).toContain('100 Ah');
});

test('a rig goes to the clipboard in a line that the bot reads', async () => {
  const s = scene();
  for (const rig of [
    '100Ah AGM, fridge 1.2A, 160W solar',
    '200Ah lithium, 2000W inverter, 20A dcdc',
    '2x 120Ah AGM',
  ]) {
    await s.tell(`/rig ${rig}`);
    const copy = buttonsOf(s.last(alone.id)).find(button => 'copy_text' in button) as {
      copy_text: { text: string };
    };
    const { text } = copy.copy_text;
    const message = { chat: 'x', from: 'Sam', at: new Date(s.clock.now), kind: 'private' as const };
    const again = converse(emptyMemory(), { ...message, text });
    const shown = (await s.store.load(String(alone.id))).memory.rigs[''];
    expect([text, again.memory.rigs['']]).toEqual([text, shown]);
    await s.tell('/forget');
    await s.tap(s.last(alone.id), 'yes, forget');
  }
});

describe('the key that shares a location goes when it was used', () => {
  const solar = 'what will 160W of solar make in october?';
  const removal = { remove_keyboard: true };
  test('by sharing', async () => {
    const s = scene();
    await s.tell(solar);
    await s.tap(s.last(alone.id), 'Use my location');
    await s.tell(undefined, { location: { latitude: -32.2, longitude: 148.6 } });
    expect(s.world.sent().at(-1)?.reply_markup).toEqual(removal);
    expect(s.world.refused).toEqual([]);
  });
  test('by writing the place instead', async () => {
    const s = scene();
    await s.tell(solar);
    await s.tap(s.last(alone.id), 'Use my location');
    await s.tell('in Dubbo');
    expect(s.world.sent().at(-1)?.reply_markup).toEqual(removal);
    await s.tell(fridge);
    expect(labelsOf(s.last(alone.id)).length).toBeGreaterThan(0);
  });
});

test('voice notes, polls, contacts and the like get one friendly line in private, once, and none in groups', async () => {
  const s = scene();
  const things = [
    { voice: {} },
    { poll: {} },
    { contact: {} },
    { sticker: {} },
    { video_note: {} },
    { dice: {} },
  ];
  for (const thing of things) await s.tell(undefined, thing as never);
  expect(s.answers(alone.id)).toHaveLength(1);
  expect(textOf(s.last(alone.id))).toMatch(/I only read words/);
  const next = scene({ store: s.store, world: s.world });
  for (const thing of things) await next.tell(undefined, thing as never);
  expect(s.answers(alone.id)).toHaveLength(1);
  for (const thing of things) await s.say(undefined, thing as never);
  expect(s.answers(group.id)).toEqual([]);
});

test('a server that shows to all what was for one has it taken back at once', async () => {
  const s = scene();
  s.makeAdmin(group.id);
  s.world.isOld = true;
  await s.say('/help');
  expect(s.world.calls.map(({ method }) => method)).toEqual([
    'getChatMember',
    'sendMessage',
    'deleteMessage',
    'sendMessage',
  ]);
  expect(s.answers(group.id).map(textOf)).toEqual([
    expect.stringMatching(/^I answer camping power questions/),
  ]);
});
