import { group, nowSec } from '../rows/one-group.ts';
import { isPrivate } from './places.ts';
import { ann, kim, type Play, sam } from './play.ts';

const fridge = 'fridge 1.2A average, 100Ah AGM, 3 days?';
const trip = '4 days, 120Ah lithium, fridge 1.8A average, 160W solar in Dubbo in October';
const change = (play: Play, from: string, to: string, user = sam) => ({
  chat: play.place.chat,
  from: sam,
  date: nowSec,
  old_chat_member: { status: from, user },
  new_chat_member: { status: to, user },
});
const anonymous = { id: 1_087_968_824, is_bot: true, first_name: 'Group' };

/** What people do, each a sequence of updates as Telegram sends them. */
export const sequences: Readonly<Record<string, (play: Play) => Promise<void>>> = {
  'the bot comes in, answers, goes and comes back': async p => {
    await p.give({ my_chat_member: change(p, 'left', 'member') as never });
    await p.ask(fridge);
    await p.give({ my_chat_member: change(p, 'member', 'kicked') as never });
    await p.give({ my_chat_member: change(p, 'kicked', 'member') as never });
    await p.ask('60W in amps');
  },
  'a question, a turn in reply, an edit, an edit of nothing': async p => {
    const question = await p.ask(fridge);
    await p.reply('and with lithium?', kim);
    await p.edit(question, 'fridge 1.2A average, 200Ah AGM, 3 days?');
    await p.edit(question, 'fridge 1.2A average, 200Ah AGM, 3 days?');
  },
  'a rig is told, shown, changed and put back': async p => {
    await p.ask('/rig 100Ah AGM, fridge 1.2A');
    await p.ask('/rig');
    await p.ask('/rig 200Ah AGM');
    await p.ask('undo');
    await p.ask('how long will my rig last?');
  },
  'two people, two rigs, one asked about by handle': async p => {
    await p.ask('/rig 100Ah AGM, fridge 1.2A', ann);
    await p.ask('/rig 200Ah lithium, fridge 2A', kim);
    await p.ask("how long will @ann_smith's rig last?", kim);
    await p.ask('how long will mine last?', kim);
  },
  'every button, by the asker, by others, twice': async p => {
    await p.ask(fridge);
    for (const who of [kim, sam, sam]) await p.tap('Show working', who);
    for (const who of [kim, sam, ann]) await p.tap('Picture', who);
    for (const who of [kim, sam, sam]) await p.tap(/lithium|days|overcast/, who);
  },
  'a trip as a picture, its working, a turn of it': async p => {
    const question = await p.ask(trip);
    await p.tap('Show working', kim);
    await p.tap('Show working');
    await p.tap(/overcast|cloud/);
    await p.edit(question, fridge);
  },
  'help: asked for, turned by subject, tapped by others': async p => {
    await p.ask('/help');
    await p.tap(/Show the help|The battery/, kim);
    await p.tap('The cable and the fuse', kim);
    await p.tap('All the subjects', kim);
    await p.whisper('/help', ann);
    await p.tap('A fault', ann);
  },
  'the notice of privacy, an export, and all is forgotten': async p => {
    await p.ask('/rig 100Ah AGM');
    await p.ask('/privacy');
    await p.tap('Show the notice', kim);
    await p.whisper('/privacy', ann);
    await p.whisper('/export');
    await p.ask('/forget');
    await p.tap('yes, forget', kim);
    await p.tap('yes, forget');
  },
  'settings: shown, changed by an admin, not by others': async p => {
    p.s.makeAdmin(p.place.chat.id, ann.id);
    await p.ask('/settings', kim);
    await p.tap('Turn the pictures off', kim);
    await p.tap('Turn the pictures off', ann);
    await p.tap('120 V', ann);
    await p.whisper('/settings', ann);
    await p.tap('240 V', ann);
    await p.ask(trip);
  },
  'the group becomes a supergroup in the middle of it': async p => {
    await p.ask('/rig 100Ah AGM, fridge 1.2A');
    if (!isPrivate(p.place)) await p.say(undefined, sam, { migrate_from_chat_id: -77 });
    await p.ask('how long will my rig last?');
  },
  'a place is shared: by key, live, in reply': async p => {
    await p.ask('what will 160W of solar make in october?');
    await p.tap('Use my location');
    const location = { latitude: -32.24, longitude: 148.6 };
    const shared = await p.say(undefined, sam, { location, reply_to_message: p.last as never });
    await p.give({ edited_message: { ...shared, edit_date: shared.date + 60 } as never });
    await p.ask('and in july?');
  },
  'what has no words': async p => {
    for (const of of [
      { voice: {} },
      { poll: { id: '1', question: 'where to?', options: [] } },
      { contact: { phone_number: '0', first_name: 'x' } },
      { sticker: {} },
      { dice: {} },
      { photo: [] },
      { pinned_message: {} },
      { new_chat_title: 'x' },
      { new_chat_members: [kim] },
    ])
      await p.say(undefined, sam, of as never);
    await p.ask(fridge);
  },
  'inline, chosen, and called as a guest': async p => {
    await p.give({ inline_query: { id: 'q', from: sam, query: fridge, offset: '' } });
    await p.give({ inline_query: { id: 'r', from: sam, query: '', offset: '' } });
    await p.give({ chosen_inline_result: { result_id: 'x', from: sam, query: fridge } });
    const asked = {
      message_id: 5,
      date: nowSec,
      chat: { ...group, id: -99 },
      from: kim,
      text: `@camp_power_bot ${fridge}`,
    };
    await p.give({ guest_message: { ...asked, guest_query_id: 'g' } as never });
    await p.ask('60W in amps');
  },
  'updates that are none of its business': async p => {
    const channel = { id: -1009, type: 'channel', title: 'News' };
    const post = { message_id: 3, date: nowSec, chat: channel, text: '/power fridge' };
    for (const update of [
      { channel_post: post },
      { edited_channel_post: { ...post, edit_date: nowSec } },
      { business_connection: { id: 'b', user: sam } },
      { business_message: { ...post, from: sam } },
      {
        message_reaction: {
          chat: group,
          message_id: 3,
          date: nowSec,
          user: sam,
          old_reaction: [],
          new_reaction: [],
        },
      },
      { message_reaction_count: { chat: group, message_id: 3, date: nowSec, reactions: [] } },
      { poll: { id: '1', question: 'x', options: [] } },
      { poll_answer: { poll_id: '1', option_ids: [0], user: sam } },
      { chat_join_request: { chat: group, from: kim, date: nowSec, user_chat_id: kim.id } },
      { chat_boost: { chat: group, boost: {} } },
      { removed_chat_boost: { chat: group, boost_id: 'x' } },
      { pre_checkout_query: { id: '1', from: sam } },
      { shipping_query: { id: '1', from: sam } },
      { purchased_paid_media: { from: sam } },
      { deleted_business_messages: { chat: group, message_ids: [1] } },
    ])
      await p.give(update as never);
    await p.ask(fridge);
  },
  'an admin who speaks as the group, and who may tap below': async p => {
    p.s.makeAdmin(p.place.chat.id, ann.id);
    const mark = isPrivate(p.place) ? {} : { from: anonymous, sender_chat: p.place.chat as never };
    await p.ask(fridge, sam, mark);
    for (const who of [kim, ann]) await p.tap(/lithium|days/, who);
    await p.tap('Show working', kim);
  },
  'danger, told and asked about': async p => {
    await p.ask('the lithium is swollen and hot to the touch');
    await p.ask('2000W inverter on a 4mm2 cable, 100Ah AGM, kettle 1800W, ok?');
    await p.ask('can I run my oxygen concentrator 60W overnight on 100Ah lithium?');
  },
  'a burst of questions': async p => {
    const texts = ['60W in amps', '90W in amps', fridge, 'what fuse for a 10A pump?', 'agm or lithium?'];
    for (const text of texts) for (const who of [sam, kim]) await p.ask(text, who);
  },
  'somebody leaves, somebody is thrown out': async p => {
    await p.ask('/rig 100Ah AGM', ann);
    await p.ask('/rig 200Ah lithium', kim);
    if (isPrivate(p.place)) return;
    await p.say(undefined, ann, { left_chat_member: ann as never });
    await p.give({ chat_member: change(p, 'member', 'kicked', kim) as never });
    await p.ask(fridge);
  },
  'not understood, then told in reply': async p => {
    await p.ask('fridge 3 days');
    await p.tap(/buy|battery/, kim);
    await p.tap(/buy|battery/);
    await p.ask('how long will a 100Ah AGM last?');
    await p.reply('fridge 1.5A average');
    await p.ask('日本語で書きます');
    await p.tap(/Show the help/, kim);
  },
  'thanks, laughter and talk': async p => {
    await p.ask(fridge);
    await p.reply('thanks legend');
    await p.reply('lol', kim);
    for (const text of ['who brings the guitar', 'g’day', 'ok ta']) await p.say(text, kim);
    await p.ask('60W in amps');
  },
  'what is old, what comes twice, what overtakes': async p => {
    await p.say(isPrivate(p.place) ? fridge : `/power ${fridge}`, sam, { date: nowSec - 7200 });
    await p.settle();
    const question = await p.ask('60W in amps', kim);
    await p.edit(question, '90W in amps');
    await p.give({ message: question as never });
  },
};
