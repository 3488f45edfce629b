import type { Rig } from '#rig/rig.ts';

/** A line of a chat over a week: the day, who, what. */
type Line = readonly [day: number, from: string, text: string];

/** A chat over a week, and the rigs that a careful reader would have at its end. */
export interface Week {
  readonly what: string;
  readonly lines: readonly Line[];
  readonly rigs: Readonly<Record<string, Rig>>;
}

/** Invented chats: rigs are told in pieces, put right, lent and sold, amid questions and talk. */
export const weeks: readonly Week[] = [
  {
    what: 'told in pieces, with a correction of the kind',
    lines: [
      [1, 'ann', 'my battery is a 100Ah agm'],
      [2, 'ann', 'nah wait its lithium'],
      [3, 'ann', 'and the fridge averages 1.4A'],
      [4, 'ben', 'nice fridge'],
      [5, 'ann', 'put a 160W panel on the roof, mppt'],
    ],
    rigs: {
      ann: {
        batteries: [{ capacityAh: 100, chemistry: 'lfp' }],
        loads: [{ name: 'fridge', currentA: 1.4, isAverage: true }],
        solar: [{ powerW: 160, controller: 'mppt' }],
      },
    },
  },
  {
    what: 'what is only asked about is not owned',
    lines: [
      [1, 'ben', 'my rig: 120Ah agm, fridge averages 1.5A'],
      [2, 'ben', 'how long would it last with 200Ah lithium?'],
      [3, 'ben', 'what if I had a 200W panel?'],
      [4, 'cleo', 'get the panel ben'],
      [5, 'ben', 'how long will mine last?'],
    ],
    rigs: {
      ben: {
        batteries: [{ capacityAh: 120, chemistry: 'agm' }],
        loads: [{ name: 'fridge', currentA: 1.5, isAverage: true }],
      },
    },
  },
  {
    what: 'two people side by side',
    lines: [
      [1, 'dora', 'ive got a 75Ah gel and a 10W light 4 hours a night'],
      [1, 'emil', 'my rig is 200Ah lithium, 300W solar'],
      [2, 'dora', 'remember my fridge averages 1.1A'],
      [3, 'emil', 'I use 55Ah a day'],
      [4, 'dora', 'and how long does mine last?'],
      [6, 'emil', 'my battery is actually 210Ah'],
    ],
    rigs: {
      dora: {
        batteries: [{ capacityAh: 75, chemistry: 'gel' }],
        loads: [
          { name: 'light', powerW: 10, hoursPerDay: 4 },
          { name: 'fridge', currentA: 1.1, isAverage: true },
        ],
      },
      emil: { batteries: [{ capacityAh: 210, chemistry: 'lfp' }], solar: [{ powerW: 300 }], dailyUseAh: 55 },
    },
  },
  {
    what: 'taken out and put back',
    lines: [
      [1, 'finn', 'my rig: 100Ah agm, fridge averages 1.2A, fan 2A 5 hours a day'],
      [2, 'finn', 'take the fan out of my rig'],
      [3, 'gus', 'too loud?'],
      [4, 'finn', 'put the fan back, 2A 5 hours a day'],
    ],
    rigs: {
      finn: {
        batteries: [{ capacityAh: 100, chemistry: 'agm' }],
        loads: [
          { name: 'fridge', currentA: 1.2, isAverage: true },
          { name: 'fan', currentA: 2, hoursPerDay: 5 },
        ],
      },
    },
  },
  {
    what: 'told by somebody for somebody else',
    lines: [
      [1, 'gwen', 'mum has a 70Ah gel in her camper'],
      [2, 'gwen', 'her fridge averages 1.1A'],
      [2, 'hal', 'hows mum'],
      [3, 'gwen', 'my rig: 100Ah lithium'],
    ],
    rigs: {
      mum: {
        batteries: [{ capacityAh: 70, chemistry: 'gel' }],
        loads: [{ name: 'fridge', currentA: 1.1, isAverage: true }],
      },
      gwen: { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] },
    },
  },
  {
    what: 'borrowed for a question, not owned',
    lines: [
      [1, 'ida', 'my rig: 100Ah agm, fridge averages 2A'],
      [1, 'joss', 'my rig: 150Ah lithium, 200W panel'],
      [2, 'ida', "how long would my fridge go on joss's battery?"],
      [3, 'ida', "and with joss's panel?"],
      [4, 'joss', 'hands off'],
    ],
    rigs: {
      ida: {
        batteries: [{ capacityAh: 100, chemistry: 'agm' }],
        loads: [{ name: 'fridge', currentA: 2, isAverage: true }],
      },
      joss: { batteries: [{ capacityAh: 150, chemistry: 'lfp' }], solar: [{ powerW: 200 }] },
    },
  },
  {
    what: 'one more of the same, then a swap',
    lines: [
      [1, 'kay', 'my rig: 100Ah agm'],
      [2, 'kay', 'add another 100Ah agm to my rig'],
      [4, 'len', 'heavy'],
      [5, 'kay', 'my battery is now a 150Ah lithium'],
    ],
    rigs: { kay: { batteries: [{ capacityAh: 150, chemistry: 'lfp' }] } },
  },
  {
    what: 'an undo and a number put right',
    lines: [
      [1, 'mia', 'my rig: 100Ah agm, fridge 14A'],
      [1, 'mia', '1.4A, sorry'],
      [2, 'ned', 'phew'],
      [3, 'mia', 'my rig: 200W solar'],
      [3, 'mia', 'undo'],
    ],
    rigs: {
      mia: { batteries: [{ capacityAh: 100, chemistry: 'agm' }], loads: [{ name: 'fridge', currentA: 1.4 }] },
    },
  },
  {
    what: 'questions of others between the pieces',
    lines: [
      [1, 'olaf', 'my battery is a 120Ah lithium'],
      [1, 'pia', 'what panel do I need for 40Ah a day in perth?'],
      [2, 'olaf', 'and a 25A dcdc'],
      [2, 'pia', 'and in july?'],
      [3, 'olaf', 'the fridge averages 1.8A'],
      [3, 'pia', 'how long does a 100Ah agm run a 2A fan?'],
    ],
    rigs: {
      olaf: {
        batteries: [{ capacityAh: 120, chemistry: 'lfp' }],
        chargers: [{ kind: 'dcdc', currentA: 25 }],
        loads: [{ name: 'fridge', currentA: 1.8, isAverage: true }],
      },
    },
  },
  {
    what: 'sold, forgotten, told anew; the neighbour’s stays',
    lines: [
      [1, 'quin', 'my rig: 90Ah gel, 80W solar'],
      [1, 'rosa', 'my rig: 60Ah lithium, fridge averages 1A'],
      [3, 'quin', 'sold the solar'],
      [5, 'quin', 'forget my rig'],
      [5, 'quin', 'yes'],
      [6, 'quin', 'my rig: 110Ah lithium'],
    ],
    rigs: {
      quin: { batteries: [{ capacityAh: 110, chemistry: 'lfp' }] },
      rosa: {
        batteries: [{ capacityAh: 60, chemistry: 'lfp' }],
        loads: [{ name: 'fridge', currentA: 1, isAverage: true }],
      },
    },
  },
];
