import { present } from '#basics/present.ts';
import { type Random, randomFrom } from '../ranges/random.ts';
import type { SimulatedRig, Style } from './rig.ts';
import { type Course, stepAt } from './truth.ts';
import { stepsPerH } from './weather.ts';

/** One reading as sent: what it says in truth's place where it is wrong, and what it must be understood as. */
export interface Sent {
  readonly atHour: number;
  readonly kind: 'percent' | 'volts' | 'amps' | 'ampsAndPercent' | 'used' | 'left';
  readonly text: string;
  readonly means: Readonly<Record<string, number>>;
}
export interface Reading {
  readonly right: Sent;
  /** What is sent in its place by mistake. */
  readonly wrong: Sent | undefined;
  readonly isStale: boolean;
}

export const toldHour = 9.5;
export const askedHour = 72 + 10;

const fixed = (value: number, to: number): number => Number((Math.round(value / to) * to).toFixed(2));
const signed = (value: number): string => (value < 0 ? String(value) : `+${value}`);

/** Volts at rest over the level, a mean of common tables (from memory), for 12 V batteries. */
const atRest = {
  agm: [11.6, 11.95, 12.22, 12.55, 12.87],
  lfp: [12, 13.02, 13.16, 13.25, 13.45],
} as const;
function restV(rig: SimulatedRig, level: number): number {
  const table = atRest[rig.chemistry];
  const at = Math.min(3.999, level * 4);
  const low = Math.floor(at);
  return present(table[low]) + (present(table[low + 1]) - present(table[low])) * (at - low);
}

/** The wordings of each kind: all of them are read surely. */
const wordings: Readonly<Record<Sent['kind'], readonly ((a: number, b: number) => string)[]>> = {
  percent: [
    a => `battery monitor reads ${a}%, how full is it?`,
    a => `how full is my battery? it shows ${a}%`,
    a => `monitor at ${a}%, how long will it last?`,
  ],
  volts: [
    a => `${a} V at rest`,
    a => `resting at ${a}V`,
    a => `battery reads ${a}V at rest, how full is it?`,
  ],
  amps: [a => `it shows ${signed(a)}A, how long will it last?`],
  ampsAndPercent: [(a, b) => `${b}% and ${signed(a)}A, how long have we got?`],
  used: [a => `used ${a}Ah, how full is it?`, a => `${a}Ah used, how full is my battery?`],
  left: [a => `${a}Ah left, how full is it?`, a => `there's ${a}Ah left in the battery, how full is it?`],
};

function say(kind: Sent['kind'], atHour: number, which: number, a: number, b = 0): Sent {
  const means: Record<string, number> =
    kind === 'percent'
      ? { level: a }
      : kind === 'volts'
        ? { volts: a }
        : kind === 'amps'
          ? { netCurrentA: a }
          : kind === 'ampsAndPercent'
            ? { netCurrentA: a, level: b }
            : kind === 'used'
              ? { chargeUsedAh: a }
              : { chargeLeftAh: a };
  const words = wordings[kind];
  return { atHour, kind, text: present(words[which % words.length])(a, b), means };
}

function kindOf(random: Random, style: Style, isMorning: boolean): Sent['kind'] {
  if (style === 'amps') return isMorning ? 'ampsAndPercent' : 'amps';
  if (style !== 'mixed') return style;
  const kinds = ['percent', 'volts', 'amps', 'ampsAndPercent', 'used', 'left'] as const;
  return present(kinds[Math.floor(random.even(0, 5.999))]);
}

/** Two digits the wrong way round, or one too many or few. */
function mistyped(random: Random, value: number): number {
  const digits = String(Math.round(Math.abs(value)));
  const at = random.even(0, 3);
  const typed =
    at < 1 && digits.length > 1
      ? [...digits].reverse().join('')
      : at < 2
        ? digits.slice(1) || '9'
        : digits.replace(/^./, first => String((Number(first) + 4) % 10));
  return Math.max(1, Math.min(100, Number(typed)));
}

/** Six readings of three days, some left out, some old when they are sent, some wrong. */
export function readingsOf(rig: SimulatedRig, course: Course): Reading[] {
  const random = randomFrom(rig.seed * 104729 + 5);
  const chance = (share: number) => random.even(0, 1) < share;
  const percentStep = chance(0.35) ? 5 : 1;
  const voltStep = chance(0.5) ? 0.1 : 0.01;
  const ahStep = chance(0.3) ? 5 : 1;
  const meterV = 0.03 * random.normal();
  const counter = 1 + 0.02 * random.normal();
  const gainA = 1 + 0.03 * random.normal();
  // A counter set by the label says what is left of the told Ah; one in the battery knows what it holds.
  const heldAh = rig.capacityAh * (rig.chemistry === 'lfp' ? rig.capacityFactor : 1);
  const told: Reading[] = [];
  for (let index = 0; index < 6; index++) {
    const isMorning = index % 2 === 1;
    const day = Math.floor((index + 1) / 2);
    const atHour = day * 24 + (isMorning ? random.even(6.2, 8.6) : random.even(18.5, 22));
    const isStale = chance(0.08);
    const isGap = chance(0.1);
    const isWrong = chance(0.05);
    const step = stepAt(isStale ? Math.max(toldHour, atHour - random.even(2, 8)) : atHour);
    const level = present(course.level[step]);
    const kind = kindOf(random, rig.style, isMorning);
    const which = Math.floor(random.even(0, 12));
    const percent = Math.max(1, Math.min(100, fixed(100 * level + 1.2 * random.normal(), percentStep)));
    // Not wholly at rest: a little sag, and what an hour of charge left on the plates.
    const charged = Math.max(0, present(course.netA[Math.max(0, step - stepsPerH)])) > 0.5 ? 0.06 : 0;
    const sag = 0.02 * (present(course.draw[step]) / Math.max(1, rig.capacityAh / 100));
    const volts = restV(rig, level) + charged - sag + meterV + 0.02 * random.normal();
    const { compressorA } = rig.habits;
    const mean = present(course.draw[step]);
    const runs = compressorA > 0 ? (chance(Math.min(1, mean / compressorA)) ? compressorA : 0.1) : mean;
    const amps = (present(course.netA[step]) + mean - runs * (1 + 0.06 * random.normal())) * gainA;
    const used = (1 - level) * rig.capacityAh * rig.capacityFactor * counter;
    const other = random.even(10, 100);
    const typo = random.even(0, 1);
    const swap = (value: number, foreign: number) => (typo < 0.6 ? mistyped(random, value) : foreign);
    const shownA = fixed(amps, 0.1) || -0.1;
    const a: Record<Sent['kind'], readonly [number, number, number]> = {
      percent: [percent, 0, swap(percent, Math.round(other))],
      volts: [
        fixed(volts, voltStep),
        0,
        typo < 0.6 ? fixed(volts - 1, voltStep) : fixed(11.4 + other / 55, 0.1),
      ],
      amps: [shownA, 0, fixed(shownA * 10, 0.1)],
      ampsAndPercent: [shownA, percent, shownA],
      used: [Math.max(ahStep, fixed(used, ahStep)), 0, swap(used, Math.round(other))],
      left: [Math.max(ahStep, fixed(heldAh - used, ahStep)), 0, swap(heldAh - used, Math.round(other))],
    };
    const [value, second, bad] = a[kind];
    const right = say(kind, atHour, which, value, second);
    const badPercent = kind === 'ampsAndPercent' ? swap(percent, Math.round(other)) : 0;
    const wrong = isWrong ? say(kind, atHour, which, bad, badPercent) : undefined;
    if (!isGap) told.push({ right, wrong, isStale });
  }
  return told;
}

/** The rig as its owner tells it, or (to know what a teller of the truth gets) as it is. */
export function toldWords(rig: SimulatedRig, isTrue = false): string {
  const [draw, capacity] = isTrue ? [rig.drawFactor, rig.capacityFactor] : [1, 1];
  const { evening } = rig;
  return [
    `my rig: ${fixed(rig.capacityAh * capacity, 1)}Ah ${rig.chemistry === 'agm' ? 'agm' : 'lithium'}`,
    `fridge ${fixed(rig.fridgeA * draw, 0.01)}A`,
    ...(evening
      ? [`${evening.name} ${fixed(evening.currentA * draw, 0.01)}A ${evening.hours} hours a day`]
      : []),
    ...(rig.panelW ? [`${rig.panelW}W solar`] : []),
    `in ${rig.town.name}`,
  ].join(', ');
}
export const askedWords = (rig: SimulatedRig): string =>
  `how long will it last from ${rig.askedPercent}% with no charging?`;
