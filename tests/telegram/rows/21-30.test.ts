import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { commands } from '#telegram/ui/commands.ts';
import { setMenus } from '#telegram/ui/menu.ts';
import { parrot, silent, stage } from '../fake/bot.ts';
import { checkCommands } from '../fake/rules.ts';
import {
  alone,
  ann,
  fridge,
  group,
  kim,
  labelsOf,
  me,
  nowSec,
  plainGroup,
  sam,
  scene,
  sends,
  startMs,
  textOf,
} from './one-group.ts';

describe('after downtime', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });
  test('row 21: 24 hours of questions: a group hears nothing of the old ones, a person one message', async () => {
    const s = scene();
    for (let hour = 23; hour > 0; hour--) {
      const date = nowSec - hour * 3600;
      await s.say(`/power ${fridge}`, { date });
      const own =
        hour % 2 === 0 ? `fridge ${hour}A, 100Ah AGM, how long?` : `2000W inverter and a ${hour}00W kettle?`;
      if (hour > 4 && hour < 16) await s.say(own, { chat: alone, date });
    }
    await vi.advanceTimersByTimeAsync(3000);
    expect(s.answers(group.id)).toEqual([]);
    expect(s.answers(alone.id)).toHaveLength(1);
    expect(s.last(alone.id).entities?.filter(e => e.type === 'date_time')).toHaveLength(11);
    expect(textOf(s.last(alone.id))).toMatch(/[Ii]t lasts about/);
    // What was to be careful of was not cut off.
    expect(textOf(s.last(alone.id))).toMatch(/\nCareful: [^\n]+$/);
    expect(s.world.refused).toEqual([]);
  });
});

test('row 22: two updates of a chat never race, and a slow chat holds up nobody', async () => {
  const [store, gate] = [new VolatileStore(), Promise.withResolvers<void>()];
  const load = store.load.bind(store);
  store.load = async chat => {
    if (chat === String(group.id)) await gate.promise;
    return load(chat);
  };
  const s = scene({ store, converse: parrot });
  const slow = [s.say('/power one'), s.say('/power two', { from: kim })];
  await s.tell('mine');
  expect(s.answers(alone.id)).toHaveLength(1);
  expect(s.answers(group.id)).toHaveLength(0);
  gate.resolve();
  await Promise.all(slow);
  expect(s.answers(group.id).map(m => m.text?.split('\n')[1])).toEqual(['first', 'after <Sam: one>']);
});

test.each([
  ['told in the old chat', ['old']],
  ['told in the new chat', ['new']],
  ['told in both, the old one first', ['old', 'new']],
  ['told in both, the new one first', ['new', 'old']],
  ['told by a refusal', []],
])('row 23: a move to a supergroup, %s, keeps rig, settings and answers', async (_how, told) => {
  const s = scene();
  s.makeAdmin(plainGroup.id, sam.id);
  await s.say('/rig 100Ah AGM, fridge 1.2A', { chat: plainGroup });
  await s.say('/pictures off', { chat: plainGroup });
  for (const where of told)
    await s.say(
      undefined,
      where === 'old'
        ? { chat: plainGroup, migrate_to_chat_id: group.id }
        : { migrate_from_chat_id: plainGroup.id },
    );
  if (told.length === 0) {
    s.world.movedTo.set(plainGroup.id, group.id);
    await s.say('/power 60W in amps', { chat: plainGroup });
    expect(s.answers(group.id)).toHaveLength(1);
  }
  await s.say('/rig');
  expect(textOf(s.last(group.id))).toContain('100 Ah AGM');
  expect((await s.store.load(String(group.id))).memory.settings.pictures).toBe(false);
});

test('row 24: kicked, blocked or left: nothing is sent, and what is kept goes after 30 days', async () => {
  const clock = { now: startMs };
  const s = scene({ clock, store: new VolatileStore({ now: () => clock.now }) });
  await s.say('/rig 100Ah AGM');
  s.world.closed.set(group.id, 'bot was kicked from the supergroup chat');
  const before = sends(s.world);
  await s.say(`/power ${fridge}`);
  expect(sends(s.world)).toBe(before + 1);
  expect(s.errors()).toEqual([]);
  s.later(29 * 86_400);
  await s.store.prune({ claims: 0 });
  expect((await s.store.load(String(group.id))).revision).not.toBe(0);
  s.later(86_400);
  await s.store.prune({ claims: 0 });
  expect((await s.store.load(String(group.id))).revision).toBe(0);
});

test('row 25: /start, /help, /settings and /privacy work; /privacy says what, why and how long', async () => {
  const s = scene();
  for (const command of ['/start', '/help', '/settings', '/privacy']) await s.tell(command);
  const [start, help, settings, privacy] = s.answers(alone.id).map(textOf);
  expect(start).toBe(help);
  expect(help).toMatch(/^I work out camping power/);
  expect(settings).toMatch(/Pictures with a trip: on\n• Pictures on light ground\n• Mains: 230 V/);
  for (const part of ['I keep', 'used for', '30 days', 'forget']) expect(privacy).toContain(part);
  // Help fits a phone: by subject, in buttons that are not cut off.
  const subjects = labelsOf(present(s.answers(alone.id)[1]));
  expect(subjects.length).toBeGreaterThanOrEqual(8);
  for (const label of subjects) expect([label, label.length <= 24]).toEqual([label, true]);
  const page = present(s.answers(alone.id)[1]);
  for (const label of subjects) {
    await s.tap(s.now(page), label);
    expect(textOf(s.now(page))).toMatch(new RegExp(`^${label}:\\n• `));
    await s.tap(s.now(page), 'All the subjects');
  }
  expect(s.now(page).text).toBe(help);
  // From the settings all can be deleted, and is asked back.
  await s.tell('/settings');
  await s.tap(s.last(alone.id), 'Forget everything');
  expect(textOf(s.last(alone.id))).toMatch(/^Forget everything I know of this chat\?/);
  // Settings are changed where they are shown.
  const shown = present(s.answers(alone.id)[2]);
  await s.tap(s.now(shown), 'Turn the pictures off');
  await s.tap(s.now(shown), '120 V');
  expect(s.now(shown).text).toMatch(/Pictures with a trip: off\n• Pictures on light ground\n• Mains: 120 V/);
  expect((await s.store.load(String(alone.id))).memory.settings).toEqual({ pictures: false, mainsV: 120 });
});

test('row 26: /forget empties the store; group data only by an admin; one’s own data as a file', async () => {
  const s = scene();
  await s.tell('/rig 100Ah AGM');
  await s.tell('/export');
  expect(s.world.sent('sendDocument')[0]?.chat_id).toBe(sam.id);
  await s.tell('/forget');
  await s.tap(s.last(alone.id), 'yes, forget');
  expect((await s.store.load(String(alone.id))).revision).toBe(0);
  await s.say('/rig 100Ah AGM');
  await s.say('/rig our rig is 200Ah lithium', { from: kim });
  await s.say('/forget everything', { from: kim });
  await s.tap(s.last(group.id), 'yes, forget', kim);
  expect(Object.keys((await s.store.load(String(group.id))).memory.rigs)).toContain('sam');
});

test('row 26, who leaves a group takes along what they told there, and nobody else’s', async () => {
  const s = scene();
  await s.say('/rig 100Ah AGM', { from: ann });
  await s.say('/rig 120Ah lithium', { from: kim });
  await s.say(`/power ${fridge}`, { from: ann });
  await s.say(undefined, { from: ann, left_chat_member: ann });
  const { rigs, people = {}, frames } = (await s.store.load(String(group.id))).memory;
  expect(Object.keys(rigs)).toEqual(['kim']);
  expect(Object.values(people)).toEqual(['Kim']);
  expect(frames.filter(({ from }) => from === 'ann')).toEqual([]);
});

test('row 27: no text, name or token is logged, and no text is kept', async () => {
  const s = scene();
  await s.say('/power fridge 1.2A, 100Ah, 3 days? secretword');
  await s.say('/rig 100Ah AGM. secretword', { from: ann });
  s.world.faults.push({ method: 'sendMessage', fault: 'cut-after' });
  await s.say('/power 60W in amps? secretword');
  const lines = JSON.stringify(
    s.logged.map(({ fields, message: said }) => [said, { ...fields, err: undefined }]),
  );
  expect(lines).not.toMatch(/secretword|Sam|Ann|Sunday|abcdefghij/);
  expect(JSON.stringify((await s.store.load(String(group.id))).memory)).not.toContain('secretword');
});

test('row 28: a menu for each scope, the same at every start, ephemeral commands in groups alone', async () => {
  const s = stage();
  await setMenus(s.bot.api, silent);
  const once = s.world.sent('setMyCommands');
  expect(once.map(({ scope }) => scope?.type)).toEqual([
    'all_private_chats',
    'all_group_chats',
    'all_chat_administrators',
    undefined,
  ]);
  for (const list of once) checkCommands(list as never);
  const ephemeral = once.map(list =>
    list.commands
      .filter((c: { is_ephemeral?: boolean }) => c.is_ephemeral)
      .map((c: { command: string }) => c.command),
  );
  expect(ephemeral[0]).toEqual([]);
  expect(ephemeral[1]).toEqual(['help', 'privacy', 'export']);
  expect(ephemeral[2]).toEqual(['help', 'settings', 'privacy', 'export']);
  expect(s.world.sent('setMyDescription')).toHaveLength(1);
  expect(s.world.refused).toEqual([]);
  await setMenus(s.bot.api, silent);
  expect(s.world.sent('setMyCommands').slice(4)).toEqual(once.slice(0, 4));
  expect(commands.length).toBeGreaterThan(8);
});

test('row 29: decimal commas, units and plurals; "an 80 Ah", "1 day"; no language that is spoken in part', async () => {
  const s = scene();
  await s.tell('fridge 1,2 A, 100Ah, 3 days?');
  const comma = textOf(s.last(alone.id)).split('\n')[0];
  await s.tell('/forget');
  await s.tap(s.last(alone.id), 'yes, forget');
  await s.tell('fridge 1.2A, 100Ah, 3 days?');
  expect(textOf(s.last(alone.id)).split('\n')[0]).toBe(comma);
  for (const text of [
    'what battery for a 1.6A fridge for 1 day',
    '80Ah AGM at 40%, 20A charger, how long?',
    'what fuse for a 10A pump',
  ])
    await s.tell(text);
  for (const said of s.answers(alone.id).map(textOf)) {
    expect(said).not.toMatch(/(?<![\d.,–¼½¾-])1 (days|hours)\b/);
    expect(said).not.toMatch(/(?<![\d¼½¾] )\b[aA] 8\d* /);
  }
  expect(s.world.sent('setMyCommands').every(({ language_code }) => language_code === undefined)).toBe(true);
});

test('row 30: inline: at most 50 results, kept for all unless a rig went in, and an answer can be passed on', async () => {
  const s = scene();
  const type = (query: string) => s.give({ inline_query: { id: 'q', from: sam, query, offset: '' } });
  await type(fridge);
  const [first] = s.world.sent('answerInlineQuery');
  expect(first?.results.length).toBe(1);
  expect([first?.cache_time, first?.is_personal]).toEqual([300, false]);
  await s.store.save(String(sam.id), { ...emptyMemory(), rigs: { '': {} } }, 0);
  await type(fridge);
  expect(s.world.sent('answerInlineQuery')[1]).toMatchObject({ is_personal: true, cache_time: 10 });
  await s.tell(fridge);
  const share = s
    .last(alone.id)
    .reply_markup?.inline_keyboard.flat()
    .find(b => b.text === 'Share this answer');
  expect(share).toMatchObject({ switch_inline_query_chosen_chat: { query: fridge } });
  // A turn of the talk means nothing elsewhere.
  await s.tell('and with 200Ah?');
  expect(labelsOf(s.last(alone.id))).not.toContain('Share this answer');
  expect(me.supports_inline_queries).toBe(true);
});
