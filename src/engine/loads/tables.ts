import { aliases, untypical } from './aliases-table.ts';
import { boilHours } from './heating.ts';

/** A typical appliance: fills in what people leave out, and is said to be typical. Ranges are low, likely, high. */
export interface Appliance {
  readonly name: string;
  readonly supply: 'dc' | 'ac';
  /** Running power, W (for mains things the plate). */
  readonly powerW: readonly [low: number, likely: number, high: number];
  /** Hours used a day; 24 for what is always on. */
  readonly hoursPerDay: readonly [low: number, likely: number, high: number];
  /** Cools by a compressor that cycles: its set point, °C. */
  readonly setPointC?: number;
  /** Starting power as a multiple of the running power. */
  readonly surge?: number;
  /** Dislikes a modified wave. */
  readonly needsSine?: boolean;
  /** The plate gives what comes out; the input is this many times as much: low, likely, high. */
  readonly inputFactor?: readonly [low: number, likely: number, high: number];
  readonly isMedical?: boolean;
  readonly source: string;
}

const common = 'common practice';
const doe = 'US Department of Energy, appliance energy use';

export const appliances: readonly Appliance[] = [
  {
    name: 'fridge',
    supply: 'dc',
    powerW: [35, 45, 60],
    hoursPerDay: [24, 24, 24],
    setPointC: 4,
    surge: 3,
    source: common,
  },
  {
    name: 'freezer',
    supply: 'dc',
    powerW: [40, 50, 70],
    hoursPerDay: [24, 24, 24],
    setPointC: -15,
    surge: 3,
    source: common,
  },
  {
    name: 'cool box',
    supply: 'dc',
    powerW: [35, 45, 60],
    hoursPerDay: [24, 24, 24],
    setPointC: 5,
    surge: 2,
    source: common,
  },
  {
    name: 'ice maker',
    supply: 'ac',
    powerW: [90, 120, 160],
    hoursPerDay: [1, 2, 4],
    surge: 3,
    source: common,
  },
  { name: 'light', supply: 'dc', powerW: [3, 5, 10], hoursPerDay: [3, 5, 6], source: common },
  { name: 'lamp', supply: 'dc', powerW: [3, 5, 10], hoursPerDay: [2, 4, 6], source: common },
  { name: 'led strip', supply: 'dc', powerW: [5, 10, 20], hoursPerDay: [3, 4, 6], source: common },
  { name: 'fan', supply: 'dc', powerW: [5, 15, 30], hoursPerDay: [6, 8, 12], source: common },
  { name: 'roof fan', supply: 'dc', powerW: [10, 25, 40], hoursPerDay: [4, 8, 12], source: common },
  { name: 'ceiling fan', supply: 'ac', powerW: [65, 75, 175], hoursPerDay: [4, 8, 12], source: doe },
  {
    name: 'water pump',
    supply: 'dc',
    powerW: [40, 60, 90],
    hoursPerDay: [0.1, 0.25, 0.5],
    surge: 2,
    source: common,
  },
  {
    name: 'pump',
    supply: 'dc',
    powerW: [40, 60, 90],
    hoursPerDay: [0.1, 0.25, 0.5],
    surge: 2,
    source: common,
  },
  { name: 'phone', supply: 'dc', powerW: [5, 10, 20], hoursPerDay: [1, 2, 3], source: common },
  { name: 'tablet', supply: 'dc', powerW: [10, 15, 30], hoursPerDay: [1, 2, 4], source: common },
  { name: 'laptop', supply: 'dc', powerW: [30, 50, 90], hoursPerDay: [2, 3, 5], source: doe },
  { name: 'camera', supply: 'dc', powerW: [5, 10, 20], hoursPerDay: [1, 1.5, 2], source: common },
  { name: 'drone', supply: 'dc', powerW: [40, 60, 100], hoursPerDay: [0.5, 1, 2], source: common },
  { name: 'router', supply: 'dc', powerW: [6, 10, 15], hoursPerDay: [12, 24, 24], source: common },
  { name: 'satellite dish', supply: 'dc', powerW: [25, 50, 75], hoursPerDay: [3, 5, 12], source: common },
  { name: 'tv', supply: 'dc', powerW: [20, 40, 60], hoursPerDay: [2, 3, 4], source: common },
  { name: 'radio', supply: 'dc', powerW: [5, 10, 25], hoursPerDay: [2, 4, 8], source: common },
  {
    name: 'cpap',
    supply: 'dc',
    powerW: [15, 30, 60],
    hoursPerDay: [7, 8, 9],
    needsSine: true,
    isMedical: true,
    source: common,
  },
  {
    name: 'cpap with humidifier',
    supply: 'dc',
    powerW: [60, 80, 100],
    hoursPerDay: [7, 8, 9],
    needsSine: true,
    isMedical: true,
    source: common,
  },
  {
    name: 'oxygen concentrator',
    supply: 'ac',
    powerW: [60, 120, 300],
    hoursPerDay: [8, 10, 24],
    needsSine: true,
    isMedical: true,
    source: common,
  },
  {
    name: 'diesel heater',
    supply: 'dc',
    powerW: [10, 20, 40],
    hoursPerDay: [4, 8, 10],
    surge: 5,
    source: 'common practice: glow plug about 10 A for minutes, then the fan',
  },
  { name: 'heater', supply: 'dc', powerW: [10, 20, 40], hoursPerDay: [4, 8, 10], source: common },
  { name: 'electric blanket', supply: 'dc', powerW: [40, 60, 100], hoursPerDay: [2, 5, 8], source: doe },
  { name: 'portable heater', supply: 'ac', powerW: [750, 1000, 1500], hoursPerDay: [1, 2, 4], source: doe },
  {
    name: 'air conditioner',
    supply: 'ac',
    powerW: [600, 1000, 1800],
    hoursPerDay: [2, 4, 8],
    surge: 4,
    needsSine: true,
    source: common,
  },
  {
    name: 'kettle',
    supply: 'ac',
    powerW: [2000, 2200, 2400],
    // One, two and four litres from 15 °C.
    hoursPerDay: [boilHours(1, 2200), boilHours(2, 2200), boilHours(4, 2200)],
    source: common,
  },
  {
    name: 'coffee machine',
    supply: 'ac',
    powerW: [900, 1200, 1500],
    hoursPerDay: [0.08, 0.17, 0.3],
    source: doe,
  },
  { name: 'toaster', supply: 'ac', powerW: [800, 900, 1400], hoursPerDay: [0.05, 0.1, 0.2], source: doe },
  {
    name: 'sandwich press',
    supply: 'ac',
    powerW: [700, 1000, 2000],
    hoursPerDay: [0.1, 0.15, 0.3],
    source: common,
  },
  {
    name: 'microwave',
    supply: 'ac',
    powerW: [700, 800, 1100],
    hoursPerDay: [0.1, 0.2, 0.3],
    surge: 1.5,
    needsSine: true,
    inputFactor: [1.45, 1.55, 1.65],
    source: doe,
  },
  {
    name: 'induction hob',
    supply: 'ac',
    powerW: [1000, 1800, 2000],
    hoursPerDay: [0.3, 0.5, 1],
    needsSine: true,
    source: common,
  },
  {
    name: 'air fryer',
    supply: 'ac',
    powerW: [1000, 1500, 1800],
    hoursPerDay: [0.2, 0.4, 0.7],
    source: common,
  },
  { name: 'slow cooker', supply: 'ac', powerW: [120, 180, 300], hoursPerDay: [4, 6, 8], source: common },
  {
    name: 'rice cooker',
    supply: 'ac',
    powerW: [300, 500, 700],
    hoursPerDay: [0.3, 0.5, 0.7],
    source: common,
  },
  { name: 'frypan', supply: 'ac', powerW: [1000, 1400, 2000], hoursPerDay: [0.2, 0.3, 0.5], source: common },
  { name: 'oven', supply: 'dc', powerW: [100, 150, 200], hoursPerDay: [0.5, 1, 2], source: common },
  {
    name: 'blender',
    supply: 'ac',
    powerW: [300, 500, 1000],
    hoursPerDay: [0.02, 0.05, 0.1],
    surge: 2,
    source: common,
  },
  {
    name: 'hair dryer',
    supply: 'ac',
    powerW: [1200, 1600, 1875],
    hoursPerDay: [0.08, 0.15, 0.25],
    source: doe,
  },
  {
    name: 'hair straightener',
    supply: 'ac',
    powerW: [30, 60, 150],
    hoursPerDay: [0.1, 0.25, 0.4],
    source: common,
  },
  {
    name: 'washing machine',
    supply: 'ac',
    powerW: [200, 350, 500],
    hoursPerDay: [0.3, 0.7, 1],
    surge: 4,
    needsSine: true,
    source: common,
  },
  {
    name: 'vacuum',
    supply: 'ac',
    powerW: [400, 800, 1400],
    hoursPerDay: [0.1, 0.2, 0.4],
    surge: 2,
    source: common,
  },
  { name: 'drill charger', supply: 'ac', powerW: [50, 90, 150], hoursPerDay: [0.5, 1, 2], source: common },
  {
    name: 'power tool',
    supply: 'ac',
    powerW: [500, 900, 1800],
    hoursPerDay: [0.1, 0.3, 1],
    surge: 2.5,
    source: common,
  },
  {
    name: 'compressor',
    supply: 'dc',
    powerW: [150, 300, 500],
    hoursPerDay: [0.1, 0.2, 0.4],
    surge: 3,
    source: common,
  },
  {
    name: 'winch',
    supply: 'dc',
    powerW: [1500, 3000, 5000],
    hoursPerDay: [0.02, 0.05, 0.1],
    surge: 1.5,
    source: common,
  },
  { name: 'water heater', supply: 'dc', powerW: [120, 200, 300], hoursPerDay: [0.5, 1, 2], source: common },
  { name: 'game console', supply: 'ac', powerW: [60, 120, 200], hoursPerDay: [1, 2, 4], source: common },
  { name: 'projector', supply: 'ac', powerW: [50, 90, 150], hoursPerDay: [1, 2, 3], source: common },
  { name: 'printer', supply: 'ac', powerW: [20, 30, 60], hoursPerDay: [0.1, 0.2, 0.5], source: common },
  { name: 'toilet', supply: 'dc', powerW: [20, 40, 80], hoursPerDay: [0.05, 0.1, 0.2], source: common },
  { name: 'gas detector', supply: 'dc', powerW: [0.5, 1, 2], hoursPerDay: [24, 24, 24], source: common },
  { name: 'clock radio', supply: 'ac', powerW: [5, 10, 10], hoursPerDay: [24, 24, 24], source: doe },
  {
    name: 'medicine fridge',
    supply: 'dc',
    powerW: [25, 40, 60],
    hoursPerDay: [24, 24, 24],
    setPointC: 5,
    surge: 3,
    isMedical: true,
    source: common,
  },
  {
    name: 'medical device',
    supply: 'ac',
    powerW: [30, 80, 150],
    hoursPerDay: [0.5, 1, 8],
    needsSine: true,
    isMedical: true,
    source: common,
  },
  {
    name: 'thermoelectric cooler',
    supply: 'dc',
    powerW: [40, 50, 60],
    hoursPerDay: [12, 24, 24],
    source: 'common practice: no compressor, it runs all the time',
  },
  { name: 'dash cam', supply: 'dc', powerW: [2, 4, 6], hoursPerDay: [2, 8, 24], source: common },
  { name: 'dvd player', supply: 'dc', powerW: [10, 15, 25], hoursPerDay: [1, 2, 3], source: common },
  { name: 'chartplotter', supply: 'dc', powerW: [5, 15, 30], hoursPerDay: [3, 6, 10], source: common },
  { name: 'heated seat', supply: 'dc', powerW: [30, 50, 80], hoursPerDay: [0.5, 1, 3], source: common },
  { name: 'evaporative cooler', supply: 'dc', powerW: [20, 45, 80], hoursPerDay: [3, 6, 10], source: common },
  {
    name: 'travel kettle',
    supply: 'dc',
    powerW: [100, 150, 250],
    hoursPerDay: [0.3, 0.6, 1],
    source: common,
  },
  { name: 'dishwasher', supply: 'ac', powerW: [800, 1200, 1800], hoursPerDay: [0.5, 1, 1.5], source: common },
  { name: 'iron', supply: 'ac', powerW: [1000, 1500, 2400], hoursPerDay: [0.1, 0.2, 0.5], source: common },
  {
    name: 'clothes dryer',
    supply: 'ac',
    powerW: [1500, 2000, 2600],
    hoursPerDay: [0.5, 1, 1.5],
    surge: 1.5,
    source: common,
  },
  { name: 'soldering iron', supply: 'ac', powerW: [20, 40, 80], hoursPerDay: [0.2, 0.5, 1], source: common },
  { name: 'desktop', supply: 'ac', powerW: [80, 200, 450], hoursPerDay: [2, 4, 8], source: common },
  { name: 'e bike charger', supply: 'ac', powerW: [80, 120, 250], hoursPerDay: [1, 3, 5], source: common },
];

const byName = new Map(appliances.map(a => [a.name, a]));
for (const [name, others] of Object.entries(aliases))
  for (const other of others) byName.set(other, byName.get(name)!);

/**
 * The row for a load's name: by its own or another name of it, else by the longest name that stands in it, whole
 * words ("coffee machine 2", "our old fridge"); the later one where two are as long, as English names end in what
 * they are. Undefined where none is typical.
 */
export function applianceOf(name: string): Appliance | undefined {
  const exact = byName.get(name);
  if (exact || unlike.has(name)) return exact;
  const parts = name.split(/[ -]+/);
  for (let length = parts.length; length > 0; length--)
    for (let at = parts.length - length; at >= 0; at--) {
      const row = byName.get(parts.slice(at, at + length).join(' '));
      if (row) return row;
    }
  return compound(parts.at(-1)!);
}

/** "headlight", "smartphone", "straighteners": a word that ends in a row's name, or is its plural. */
function compound(word: string): Appliance | undefined {
  const one = word.length > 4 ? word.replace(/s$/, '') : word;
  let best: string | undefined;
  for (const name of byName.keys())
    if (name.length > 3 && one.endsWith(name) && name.length > (best?.length ?? 0)) best = name;
  return best === undefined ? undefined : byName.get(best);
}

const unlike = new Set(untypical);
