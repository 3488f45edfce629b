import type { User } from 'grammy/types';
import type { Group } from './telegram.ts';

/** One scene of a group: what it shows, and what people do in it. */
export interface Scene {
  readonly title: string;
  readonly shows: string;
  readonly play: (group: Group) => Promise<void>;
}

let id = 1000;
const person = (first_name: string, last_name?: string): User => ({
  id: ++id,
  is_bot: false,
  first_name,
  ...(last_name !== undefined && { last_name }),
});
/** All invented. */
const [ness, col, jo, sam, otherSam] = [
  person('Ness'),
  person('Col'),
  person('Jo'),
  person('Sam'),
  person('Sam', 'Birch'),
] as const;

export const scenes: readonly Scene[] = [
  {
    title: 'It comes, says how to ask, and is silent',
    shows:
      'One short hello. What people say to each other is none of its business, also where it is of power.',
    play: async g => {
      await g.join(ness);
      await g.say(col, 'my fridge draws 1.5A, the battery should be good for 3 days?');
      await g.say(jo, 'no chance');
      await g.say(col, '/roll@dice_bot');
    },
  },
  {
    title: 'A question, and how it was worked out',
    shows: 'One question, one message; the working opens in its place.',
    play: async g => {
      await g.say(col, '/power how long will 100Ah AGM run a fridge averaging 1.5A?');
      await g.press(col, 'Show working');
    },
  },
  {
    title: 'What if',
    shows: 'A reply to an answer goes on from it; so does a button, in the place of the answer.',
    play: async g => {
      await g.say(jo, '/power fridge 1.5A average, 100Ah AGM, 3 days?');
      await g.say(jo, 'what if lithium?', { isReply: true });
      await g.press(jo, 'what solar do I need?');
    },
  },
  {
    title: 'A slip of the finger',
    shows: 'An edited question edits its answer.',
    play: async g => {
      const asked = await g.say(ness, '/power how long will 10Ah AGM run a fridge averaging 1.5A?');
      await g.edit(asked, '/power how long will 110Ah AGM run a fridge averaging 1.5A?');
    },
  },
  {
    title: 'A trip',
    shows: 'The answer is a picture; its caption has all the numbers. A button draws it anew in its place.',
    play: async g => {
      await g.say(
        ness,
        '/power 5 days in Dubbo in June, 120Ah lithium, fridge 2A average, lights 10W 4h a day, 160W solar',
      );
      await g.press(ness, "what if it's overcast?");
      await g.press(ness, 'day by day please');
    },
  },
  {
    title: 'Before and after',
    shows: 'What changes with a “what if” stands in one picture; an admin puts pictures on dark ground.',
    play: async g => {
      g.admins.add(jo.id);
      await g.say(jo, '/power fridge 2A average, 100Ah lithium, 3 days?');
      await g.say(jo, 'what if 200Ah?', { isReply: true });
      await g.press(jo, 'Picture');
      await g.say(jo, '/pictures dark');
      await g.say(jo, '/power fridge 2A average, 100Ah lithium, 3 days?');
      await g.press(jo, 'Picture');
    },
  },
  {
    title: 'A wiring sketch',
    shows:
      'A rig as a schematic, each cable and fuse chosen for the other: to talk over, not to build mains by. One cable alone has its own.',
    play: async g => {
      await g.say(
        col,
        '/rig 2 x 100Ah lithium, 2 x 200W panels with mppt, 25A dcdc charger, 1000W inverter, fridge 4A, lights 20W, pump 5A',
      );
      await g.press(col, 'Picture');
      await g.say(col, '/power what cable for a 25A dcdc charger over 7m?');
      await g.press(col, 'Picture');
    },
  },
  {
    title: 'Sun by month',
    shows: 'What panels make over the year, against the use.',
    play: async g => {
      await g.say(ness, '/power what will a 200W panel make in Mildura in July if I use 40Ah a day?');
      await g.press(ness, 'Picture');
    },
  },
  {
    title: 'An argument',
    shows: 'Who is nearest, what each claim would need, and a picture at the press of a button.',
    play: async g => {
      await g.say(
        jo,
        '/power Col says 6 days, Ness says 2. 100Ah lithium, fridge 1.5A average. Who is right?',
      );
      await g.press(jo, 'Picture');
    },
  },
  {
    title: "A day's use",
    shows: 'A bar for each load, the biggest first.',
    play: async g => {
      await g.say(
        col,
        '/power fridge 1.5A average, lights 10W 4h a day, laptop 60W 3h a day, pump 5A 10 min a day: how much a day?',
      );
      await g.press(col, 'Picture');
    },
  },
  {
    title: 'Two of one name',
    shows: 'Each has a rig, and each has the buttons of their own answers; an admin has all.',
    play: async g => {
      await g.say(sam, '/rig 100Ah AGM, fridge 1.5A average');
      await g.say(otherSam, '/rig 200Ah lithium, fridge 2A average');
      await g.say(otherSam, '/power how many days will my rig run?');
      await g.press(sam, 'what if agm?');
      await g.say(sam, '/power how many days will my rig run?');
    },
  },
  {
    title: 'Something is missing',
    shows: 'One question back, answered by a reply. What is no question of power only its asker hears about.',
    play: async g => {
      await g.say(col, '/power how long will a 120Ah AGM last?');
      await g.say(col, 'fridge 1.8A average', { isReply: true });
      await g.say(jo, '/power who brings the guitar');
    },
  },
  {
    title: 'Where the sun is',
    shows:
      'A location shared in reply is where the sun is from then on; only an admin deletes what the group has.',
    play: async g => {
      await g.say(ness, '/power what will 160W of solar make in July?');
      await g.share(ness, -34.18, 142.16);
      await g.say(ness, '/power forget everything');
      g.admins.add(col.id);
      await g.say(col, '/power forget everything');
    },
  },
];
