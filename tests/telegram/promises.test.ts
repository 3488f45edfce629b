import type { Message } from 'grammy/types';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { subjects } from '#conversation/subjects.ts';
import { setMenus } from '#telegram/ui/menu.ts';
import { silent } from './fake/bot.ts';
import { Refusal } from './fake/rules.ts';
import {
  alone,
  ann,
  buttonsOf,
  fridge,
  group,
  kim,
  labelsOf,
  nowSec,
  type Scene,
  sam,
  scene,
  textOf,
} from './rows/one-group.ts';

/** What docs/telegram.md promises, point by point, each in one scene from its first message to its last. */

vi.mock('#answer/chart/png.ts', () => ({
  png: async () => Buffer.from('89504e470d0a1a0a0000000d49484452000004b0000002a3', 'hex'),
}));
let s: Scene;
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  s = scene();
});
afterEach(() => {
  expect(s.errors()).toEqual([]);
  vi.useRealTimers();
});
const pass = async (seconds: number): Promise<void> => {
  for (let left = seconds; left > 0; left--) {
    s.later(1);
    await vi.advanceTimersByTimeAsync(1000);
  }
};
const first = (m: Message): string => present(textOf(m).split('\n')[0]);
const use = 'fridge 1.2A average, lights 1A for 5h, pump 4A for 30 min, what do I use a day?';

describe('answers for one person', () => {
  test('an evening in a group where the bot is no admin: nothing private or idle is read by all', async () => {
    await s.say('/help', { message_id: 0, ephemeral_message_id: 11, from: kim });
    await s.say('/privacy', { from: ann });
    await s.tap(s.last(group.id), 'Show the notice', ann);
    await s.say(`/power ${fridge}`);
    await s.tap(s.last(group.id), 'Show working', kim);
    await s.say('cheers', { reply_to_message: s.last(group.id) as never, from: kim });
    const public_ = s.answers(group.id).map(first);
    expect(public_).toHaveLength(2);
    expect(public_[0]).toMatch(/^What I keep, why and for how long stands in my notice/);
    expect(s.whispers().map(m => m.receiver_user?.id)).toEqual([kim.id, ann.id, kim.id]);
    // Each names the tap or the command that it answers.
    const named = [...s.world.sent('sendMessage'), ...s.world.sent('sendRichMessage')].filter(
      call => call.ephemeral_message_parameters,
    );
    const isNamed = named.map(
      call =>
        call.reply_parameters?.ephemeral_message_id ?? call.ephemeral_message_parameters.callback_query_id,
    );
    expect(isNamed.every(cause => cause !== undefined)).toBe(true);
    expect(s.world.refused).toEqual([]);
  });

  test('the menu says which commands are for one: in groups alone', async () => {
    await setMenus(s.bot.api, silent);
    const menu = s.world.sent('setMyCommands').find(({ scope }) => scope?.type === 'all_group_chats');
    const isForOne = (name: string) =>
      menu?.commands.find((c: { command: string }) => c.command === name)?.is_ephemeral === true;
    expect(['help', 'privacy', 'export', 'power', 'rig'].map(isForOne)).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
  });
});

test('who may: settings by admins, gear by its owner, an anonymous admin’s buttons by admins, nothing gone in one tap', async () => {
  s.makeAdmin(group.id, ann.id);
  await s.say('/settings', { from: kim });
  const page = s.last(group.id);
  await s.tap(page, '120 V', kim);
  expect((await s.store.load(String(group.id))).memory.settings.mainsV).toBeUndefined();
  await s.tap(page, '120 V', ann);
  expect((await s.store.load(String(group.id))).memory.settings.mainsV).toBe(120);
  await s.say('/rig 100Ah AGM', { from: sam });
  await s.say("/power delete Sam's rig", { from: kim });
  for (const label of labelsOf(s.last(group.id)).filter(text => text === 'yes, forget'))
    await s.tap(s.last(group.id), label, kim);
  expect(Object.keys((await s.store.load(String(group.id))).memory.rigs)).toContain('sam');
  const anonymous = { id: 1_087_968_824, is_bot: true, first_name: 'Group' };
  await s.say(`/power ${fridge}`, { from: anonymous, sender_chat: group as never });
  const answer = s.last(group.id);
  await s.tap(answer, /lithium/, kim);
  expect(s.now(answer)).toEqual(answer);
  await s.tap(answer, /lithium/, ann);
  expect(textOf(s.now(answer))).toMatch(/lithium/);
  await s.say('/forget everything', { from: ann });
  expect(Object.keys((await s.store.load(String(group.id))).memory.rigs)).toContain('sam');
  const danger = buttonsOf(s.last(group.id)).find(({ text }) => text === 'yes, forget');
  expect(danger).toMatchObject({ style: 'danger' });
  await s.tap(s.last(group.id), 'yes, forget', ann);
  expect((await s.store.load(String(group.id))).revision).toBe(0);
});

test('delivery: a ban, a 502, hours away and a busy minute in one day', async () => {
  s.world.floods.ban(group.id, 90, s.clock.now);
  await s.say(`/power ${fridge}`);
  await s.tell('60W in amps');
  expect([s.answers(group.id).length, s.answers(alone.id).length]).toEqual([0, 1]);
  await pass(92);
  expect([s.answers(group.id).length, s.world.floods.early]).toEqual([1, 0]);
  s.world.faults.push({ method: 'sendMessage', fault: 'lost-after' });
  await s.say('/power what fuse for a 10A pump?');
  expect(s.answers(group.id)).toHaveLength(2);
  for (const text of ['90W in amps', 'agm or lithium?'])
    await s.tell(text, { date: Math.floor(s.clock.now / 1000) - 4 * 3600 });
  await pass(3);
  expect(s.answers(alone.id)).toHaveLength(2);
  expect(textOf(s.last(alone.id))).toMatch(/^I was away/);
  await pass(60);
  // Taps and edits count for themselves.
  const question = await s.say('/power 100W in amps', { from: kim });
  for (let i = 0; i < 12; i++)
    await s.give({
      edited_message: { ...question, text: `/power ${101 + i}W in amps`, edit_date: nowSec + 200 } as never,
    });
  for (let i = 0; i < 9; i++) await s.say(`/power ${50 + i}W in amps`, { from: kim });
  expect(textOf(s.last(group.id))).toContain('58 W');
});

test('names: whole in any script, a handle is its owner’s, a leaver takes theirs along, also out of others’ questions', async () => {
  const mariya = { id: 1010, is_bot: false, first_name: 'Мария' };
  await s.say('/rig 80Ah AGM, fridge 1A', { from: mariya });
  await s.say("/power show Мария's rig", { from: kim });
  expect(first(s.last(group.id))).toMatch(/^Мария's rig: 80 Ah AGM/);
  await s.say('/rig 100Ah AGM, fridge 1.2A', { from: ann });
  await s.say("/power how long will @ann_smith's rig last?", { from: kim });
  expect(textOf(s.last(group.id))).toMatch(/Ann/);
  await s.say(undefined, { from: ann, left_chat_member: ann });
  const { memory } = await s.store.load(String(group.id));
  expect(Object.keys(memory.rigs)).toEqual(['мария']);
  expect(JSON.stringify(memory)).not.toMatch(/"ann"|1\.2/i);
});

describe('features of late, each with the words as its fall-back', () => {
  const table = (call: { rich_message: { blocks: { type: string; cells?: { text: string }[][] }[] } }) =>
    call.rich_message.blocks
      .find(({ type }) => type === 'table')
      ?.cells?.map(row => row.map(({ text }) => text));

  test('where pictures are refused the numbers come as a table, on an old server as words', async () => {
    s.world.withoutPhotos.add(group.id);
    await s.say(`/power ${use}`);
    await s.tap(s.last(group.id), 'Picture');
    const rows = present(table(s.world.sent('sendRichMessage')[0] as never));
    expect(present(rows[0])[0]).toBe('What');
    expect(rows.slice(1).map(([what]) => what)).toEqual(['fridge', 'lights', 'pump']);
    expect(present(rows[1])[1]).toMatch(/^28\.?8?|29$/);
    await s.say(`/power ${use}`, { from: kim });
    s.world.isOld = true;
    await s.tap(s.last(group.id), 'Picture', kim);
    expect(textOf(s.last(group.id))).toMatch(/fridge .*, lights .*, pump/);
  });

  test('others’ own copy of a picture that is refused is a table too', async () => {
    s.world.withoutPhotos.add(group.id);
    await s.say('/power how long will 200Ah AGM run a fridge averaging 1.5A?');
    const answer = s.last(group.id);
    await s.tap(answer, 'Picture', kim);
    expect(s.whispers().map(m => m.receiver_user?.id)).toEqual([kim.id]);
    const rows = present(table(s.world.sent('sendRichMessage')[0] as never));
    expect(rows[0]).toEqual(['When', 'Charge']);
    expect(rows.length).toBeGreaterThanOrEqual(3);
    expect(rows.slice(1).every(([, low]) => /^\d+ %/.test(present(low)))).toBe(true);
  });

  test('a thumb for thanks, a rig to copy, a question to share, red for what deletes, dates in the reader’s zone', async () => {
    await s.tell('thanks');
    expect([...s.world.reactions.values()]).toEqual(['\u{1F44D}']);
    await s.tell('/rig 100Ah AGM, fridge 1.2A');
    expect(buttonsOf(s.last(alone.id)).find(b => 'copy_text' in b)).toMatchObject({
      copy_text: { text: expect.stringMatching(/^my rig: 100 Ah AGM/) },
    });
    await s.tell('/settings');
    expect(buttonsOf(s.last(alone.id)).find(({ text }) => text === 'Forget everything')).toMatchObject({
      style: 'danger',
    });
    for (const text of ['60W in amps', '90W in amps']) await s.tell(text, { date: nowSec - 7200 });
    await pass(3);
    const dates = s.last(alone.id).entities?.filter(({ type }) => type === 'date_time');
    expect(dates).toHaveLength(2);
    await setMenus(s.bot.api, silent);
    expect(s.world.sent('setMyDescription')[0]?.description).toMatch(/Camping power/);
  });

  test('rich refused by its format: the same as words', async () => {
    await s.say(`/power ${fridge}`);
    s.world.faults.push({ method: 'sendRichMessage', fault: new Refusal(400, 'Bad Request: TABLE_INVALID') });
    await s.tap(s.last(group.id), 'Show working', kim);
    expect(s.whispers()).toHaveLength(1);
    expect(s.whispers()[0]?.entities?.at(-1)?.type).toBe('expandable_blockquote');
  });
});

test('help fits a phone: every button at most 24 characters, every subject with examples that are answered', async () => {
  await s.tell('/help');
  const help = s.last(alone.id);
  expect(textOf(help).split('\n').length).toBeLessThanOrEqual(8);
  const keys = labelsOf(help);
  expect(keys).toEqual(subjects.map(({ title }) => title));
  expect(keys.filter(text => text.length > 24)).toEqual([]);
  // A thing has its article.
  expect(keys.filter(text => !/^(The|A|How) /.test(text))).toEqual([]);
  for (const subject of keys) {
    await s.tap(s.now(help), subject);
    const page = s.now(help);
    expect(textOf(page)).toMatch(new RegExp(`^${subject}:\n• `));
    expect(textOf(page).length).toBeLessThan(700);
    await s.tap(page, 'All the subjects');
    s.later(10);
  }
});

test('every button of its own that an evening brings is at most 24 characters; what it asks stands whole', async () => {
  const said = new Set<string>();
  for (const text of [
    '/settings',
    '/help',
    fridge,
    '/rig 100Ah AGM',
    'what will 160W of solar make in october?',
  ]) {
    await s.tell(text);
    for (const button of buttonsOf(s.last(alone.id))) {
      const asks = 'callback_data' in button && button.callback_data.split('|')[1] === 'n';
      if (!asks) said.add(button.text);
    }
  }
  const own = [...said];
  expect(own.length).toBeGreaterThan(15);
  expect(own.filter(text => text.length > 24)).toEqual([]);
});

test('/settings shows what goes, a button or a word changes it, and the next answer goes by it', async () => {
  await s.tell('/settings');
  const page = s.last(alone.id);
  expect(textOf(page)).toMatch(/Pictures with a trip: on\n• Pictures on light ground\n• Mains: 230 V/);
  await s.tap(page, '120 V');
  await s.tap(s.now(page), 'Turn the pictures off');
  expect(textOf(s.now(page))).toMatch(
    /Pictures with a trip: off\n• Pictures on light ground\n• Mains: 120 V/,
  );
  await s.tell('trip for 4 days, 120Ah lithium, fridge 1.8A average, 160W solar in Dubbo in October');
  expect(s.world.sent('sendPhoto')).toEqual([]);
  await s.tell('/pictures on');
  await s.tell('/settings');
  expect(textOf(s.last(alone.id))).toMatch(
    /Pictures with a trip: on\n• Pictures on light ground\n• Mains: 120 V/,
  );
});
