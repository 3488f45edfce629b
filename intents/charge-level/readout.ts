import { duration, span } from '#answer/say.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { factsOf } from '../facts.ts';
import { amountsOf } from '../figures-told.ts';
import { levelByVolts } from '../level.ts';
import { chemistryName } from '../words.ts';
import type { WorkedBeside } from '../worked-beside.ts';
import { isNearVolts } from './against.ts';
import { blocksOf, isOnCharge } from './compute.ts';

/** What stands on a battery monitor. */
interface ReadOut {
  readonly volts?: number;
  readonly percent?: number;
  /** Plus goes in, minus out. */
  readonly amps?: number;
  readonly hours?: number;
  readonly capacityAh?: number;
  readonly chemistry?: Chemistry;
}

/** So few amps are as good as none, A. */
const restA = 0.1;
/** Hours to go that differ by less than this share agree: monitors go by the mean of some minutes. */
const agreeing = 0.2;
/** Levels at which monitors are usually told to count as empty, share of the label. */
const floors = [0, 0.1, 0.2, 0.5] as const;

/** A current with its sign, by what stands before it, else by the words after it; hours to go are told only of what goes out. */
function ampsIn(mentions: readonly Mention[], hasHours: boolean): number | undefined {
  const amount = amountsOf(mentions, 'current')[0];
  if (!amount) return undefined;
  const at = mentions.indexOf(amount);
  const before = mentions[at - 1]?.key;
  const after = mentions.slice(at + 1, at + 3).find(({ text }) => text === 'in' || text === 'out')?.text;
  if (amount.isNegative || before === '-' || before === '−' || before === 'minus')
    return -Math.abs(amount.value);
  if (before === '+' || before === 'plus' || after === 'in') return amount.value;
  return after === 'out' || hasHours ? -amount.value : amount.value;
}

/** "4h 30m" is one time. */
function hoursIn(mentions: readonly Mention[]): number | undefined {
  const amount = amountsOf(mentions, 'time')[0];
  if (!amount) return undefined;
  const next = mentions[mentions.indexOf(amount) + 1];
  const isMinutes = next?.kind === 'amount' && next.unit === 'm' && next.told < 60 && amount.unit === 'h';
  return amount.value + (isMinutes ? next.told / 60 : 0);
}

function readOutOf({ batteries = [] }: Facts, mentions: readonly Mention[]): ReadOut {
  const hours = hoursIn(mentions);
  const battery = batteries.find(({ role }) => role !== 'starter');
  return {
    volts: amountsOf(mentions, 'voltage')
      .map(({ value }) => value)
      .find(v => v !== 12 && v !== 24),
    percent: amountsOf(mentions, 'percent')[0]?.value,
    amps: ampsIn(mentions, hours !== undefined),
    hours,
    capacityAh:
      amountsOf(mentions, 'charge')[0]?.value ?? (battery?.capacityAh && battery.capacityAh * battery.count),
    chemistry:
      (mentions.find(({ kind }) => kind === 'chemistry')?.key as Chemistry | undefined) ?? battery?.chemistry,
  };
}

/** "8.2 A going out", "nothing in or out". */
function flow(amps: number): string {
  if (Math.abs(amps) < restA) return 'nothing in or out';
  return `${significant(Math.abs(amps))} A going ${amps < 0 ? 'out' : 'in'}`;
}

/** The share of the label at which the hours to go end, if they go with the rest; undefined: they don't. */
function floorOf({ percent = 0, amps = 0, hours, capacityAh }: ReadOut): number | undefined {
  if (hours === undefined || capacityAh === undefined) return undefined;
  const countedAh = hours * Math.abs(amps);
  return floors.find(share => Math.abs(countedAh / ((percent / 100 - share) * capacityAh) - 1) <= agreeing);
}

/** The level, what flows, and how long that goes on. */
function headline(readOut: ReadOut): string {
  const { percent = 0, amps, hours, capacityAh } = readOut;
  const heldAh = capacityAh === undefined ? undefined : (percent * capacityAh) / 100;
  const level = heldAh === undefined ? `${plain(percent)} % full` : `About ${plain(heldAh)} Ah left`;
  if (amps === undefined)
    return `${level}${hours === undefined ? '' : `, ${duration(hours)} to go as it reckons`}.`;
  if (amps < -restA) {
    const counted = heldAh === undefined ? undefined : heldAh / -amps;
    const left = counted !== undefined && floorOf(readOut) === undefined ? counted : (hours ?? counted);
    return `${level}, ${flow(amps)}${left === undefined ? '' : `: ${duration(left)} till it’s empty`}.`;
  }
  const missing = capacityAh === undefined || heldAh === undefined ? 0 : capacityAh - heldAh;
  return amps > restA && missing > 0
    ? `${level}, ${flow(amps)}: ${duration(missing / amps)} or more till it’s full.`
    : `${level}, ${flow(amps)}.`;
}

/** Whether the hours go with the per cent and the amps, and what they tell of the size that the monitor goes by. */
function onHours(readOut: ReadOut): string | undefined {
  const { percent, amps, hours, capacityAh } = readOut;
  if (percent === undefined || amps === undefined || hours === undefined || amps > -restA) return undefined;
  const countedAh = hours * -amps;
  const told = `${plain(hours)} h × ${significant(-amps)} A is ${plain(countedAh)} Ah`;
  if (capacityAh === undefined)
    return `${told}: at ${plain(percent)} % that is a battery of about ${plain((100 * countedAh) / percent)} Ah. Is that yours?`;
  const floor = floorOf(readOut);
  if (floor === 0)
    return `The hours agree: ${told}, and ${plain(percent)} % of ${plain(capacityAh)} Ah is ${plain((percent * capacityAh) / 100)}.`;
  if (floor !== undefined) return `The hours agree if it counts ${plain(100 * floor)} % as empty: ${told}.`;
  return `The hours don’t agree: ${told}, but ${plain(percent)} % of ${plain(capacityAh)} Ah is ${plain((percent * capacityAh) / 100)}. Is its Ah set right?`;
}

/** The kinds of battery that volts and per cent may be of together. */
function kindsOf({ volts, percent = 0, amps = 0, chemistry }: ReadOut): readonly Chemistry[] {
  const kinds: readonly Chemistry[] = chemistry ? [chemistry] : ['lead-acid', 'lfp'];
  if (volts === undefined || amps > restA) return kinds;
  const blocks = blocksOf(volts);
  const isOf = (kind: Chemistry): boolean =>
    (kind === 'lfp' || !isOnCharge(volts, kind, blocks)) &&
    isNearVolts(percent, levelByVolts(volts, kind, blocks, amps < -restA), kind === 'lfp');
  return kinds.filter(isOf);
}

/** Whether the volts go with the per cent. */
function onVolts(readOut: ReadOut): string | undefined {
  const { volts, percent, amps = 0, chemistry } = readOut;
  if (volts === undefined || percent === undefined) return undefined;
  const isLoaded = amps < -restA;
  const read = `${significant(volts, 4)} V${isLoaded ? ' under load' : ''}`;
  if (amps > restA) return `${read} while it charges tells little of the level.`;
  const [kind, other] = kindsOf(readOut);
  if (!kind) {
    const of = chemistry ?? 'lead-acid';
    const { low, high } = levelByVolts(volts, of, blocksOf(volts), isLoaded);
    return `The volts don’t agree: ${read} on ${chemistryName(of)} is ${span(low, high, '%')}. Set it to 100 % once full.`;
  }
  const hint = kind === 'lfp' ? ', though lithium’s volts tell little' : '';
  if (chemistry ?? other) return `The volts agree: ${read} fits ${plain(percent)} %${hint}.`;
  return kind === 'lfp'
    ? `The volts agree if it’s lithium: lead-acid reads ${read} only near full or on charge.`
    : `The volts agree if it’s lead-acid: ${read}.`;
}

/** How far down each kind is used as a rule, %. */
const stopAt = (kind: Chemistry): number => (kind === 'lfp' ? 20 : 50);

/** What of it is for use. */
function onUse(readOut: ReadOut): string | undefined {
  const { percent, capacityAh, amps = 0 } = readOut;
  const [kind, other] = kindsOf(readOut);
  if (percent === undefined || capacityAh === undefined || amps > -restA || !kind || other) return undefined;
  const name = chemistryName(kind);
  const leftAh = ((percent - stopAt(kind)) * capacityAh) / 100;
  return leftAh <= 0
    ? `On ${name} it’s time to charge: stop at ${stopAt(kind)} %.`
    : `Stop at ${stopAt(kind)} % with ${name}: that far it’s ${duration(leftAh / -amps)}.`;
}

const isWhole = ({ volts, percent, amps, hours }: ReadOut): boolean =>
  percent !== undefined && [volts, amps, hours].filter(one => one !== undefined).length >= 2;

const spots = [
  'monitor|shunt|display|screen|app|bmv|meter|gauge|says|shows|reads|showing|reading telling_me|tell_me|tells_me|all_mean|mean|means|explain|make_sense|makes_sense|looking_at|add_up|adds_up|it_saying|to_read|read_this|read_it|read_that|read_them|decode|translate|understand',
];

/** How it is asked what a monitor makes its hours of. */
const hoursSpots = [
  'where|wheres|how|hows|why get|gets|getting|got|come|comes|coming|came|work|works|working|worked|calculate|calculates|reckon|reckons|figure|figures|know|knows|say|says|think|thinks hours|h|hrs|that|it|time_to_go|to_go|time_left|left from|to|that|it|hours|out|get|know -how_long_till -how_long_until -how_long_will -how_full -how_many -panel -charger',
];

/** Where the hours to go come from: what is left by its count, over the amps of now. */
function hoursFrom(readOut: ReadOut): readonly [string, ...string[]] {
  const { hours = 0, amps, percent, capacityAh } = readOut;
  const ups = 'It goes up and down with what runs: a monitor averages the amps over some minutes at most.';
  if (amps === undefined)
    return [`It divides the amp hours that it thinks are left by the amps now: ${plain(hours)} h.`, ups];
  const countedAh = hours * Math.abs(amps);
  const size =
    percent === undefined || capacityAh !== undefined
      ? ''
      : `, so it takes the battery for about ${plain((100 * countedAh) / percent)} Ah`;
  return [
    `It divides the Ah it thinks are left by the amps now: ${plain(countedAh)} Ah at ${significant(Math.abs(amps))} A is ${plain(hours)} h.`,
    ...(percent === undefined || size === '' ? [] : [`It holds ${plain(percent)} %${size}. Is that yours?`]),
    ...(capacityAh === undefined ? [] : [onHours(readOut) ?? '']).filter(line => line !== ''),
    ups,
  ];
}

/** All that a battery monitor shows, read aloud: level, current, hours, and whether they agree. */
export const readOuts: readonly Aside[] = [
  {
    name: 'read-out',
    hasAnyFigures: true,
    isAsked: 'for-sure',
    spots,
    when: (facts, { recognised: { mentions } }) => isWhole(readOutOf(facts, mentions)),
    says: (facts, mentions) => headline(readOutOf(facts, mentions)),
    lines: (facts, mentions) => {
      const all = readOutOf(facts, mentions);
      return [onHours(all), onVolts(all), onUse(all)].filter(line => line !== undefined);
    },
    next: ['what is a shunt?'],
  },
];

/** Where the hours to go of a monitor come from. */
export const hoursToGo: WorkedBeside = {
  name: 'hours-from',
  spots: hoursSpots,
  when: ({ facts, recognised: { mentions } }) => {
    const { hours, amps, percent } = readOutOf(factsOf(facts), mentions);
    return hours !== undefined && percent !== undefined && (amps ?? 0) < restA;
  },
  takes: [],
  reply: (facts, { parsed: { recognised } }) => {
    const [headline, ...lines] = hoursFrom(readOutOf(facts, recognised.mentions));
    return { headline, lines, verdict: null, next: ['what is a shunt?'] };
  },
};
