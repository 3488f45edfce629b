import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { hear } from '#conversation/hear.ts';
import { learnt } from '#conversation/kept/learned.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { askedHour, askedWords, readingsOf, type Sent, toldHour, toldWords } from './owner.ts';
import { report } from './report.ts';
import { rigOf, type SimulatedRig } from './rig.ts';
import { courseOf, drawA, trueRunTimeH, usual } from './truth.ts';

/** What the bot said when it was asked, against what would have come. */
export interface Asked {
  readonly error: number;
  /** Said over true, less 1: which way it is off. */
  readonly bias: number;
  readonly isHeld: boolean;
  /** Width of the range over its value. */
  readonly width: number;
  readonly valueH: number;
}
export interface Result {
  readonly rig: SimulatedRig;
  readonly truthH: number;
  readonly before: Asked;
  readonly after: Asked;
  /** The same with the wrong readings put right. */
  readonly clean: Asked;
  /** The bot that was told what is true, with no readings. */
  readonly informed: Asked;
  /** Error of one who knows the rig and its habits wholly, and not the weather to come. */
  readonly known: number;
  readonly hasAmpsLast: boolean;
  readonly wrong: number;
  readonly sent: number;
  readonly stale: number;
  readonly wasCut: boolean;
}
export interface Tally {
  read: number;
  readonly misread: string[];
  readonly unanswered: string[];
  readonly outside: number[];
  learnMs: number;
  learnCalls: number;
  answerMs: number;
}

const intents = ['charge-level', 'run-time'];

function messageAt(rig: SimulatedRig, hour: number, text: string): Message {
  const utcH = hour - rig.town.lonDeg / 15;
  const at = new Date(Date.UTC(2026, rig.month - 1, 10) + utcH * 3600_000);
  return { chat: `rig-${rig.seed}`, from: 'Kim', text, at, kind: 'private' };
}

/** What was understood, as a reading's meaning: numbers alone. */
function numbersOf({ understood }: Answer): Record<string, number> {
  const { volts, netCurrentA, chargeUsedAh, chargeLeftAh, batteries } = understood;
  const found = {
    volts,
    netCurrentA,
    chargeUsedAh,
    chargeLeftAh,
    level: batteries?.[0]?.stateOfChargePercent,
  };
  return Object.fromEntries(Object.entries(found).filter(([, value]) => value !== undefined)) as Record<
    string,
    number
  >;
}
const sorted = (numbers: Readonly<Record<string, number>>) => JSON.stringify(Object.entries(numbers).sort());

const cpuMs = (work: () => void): number => {
  const began = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1000;
};

/** A talk of one rig: told, read, asked. */
function talk(
  rig: SimulatedRig,
  atHour: number,
  told: string,
  readings: readonly Sent[],
  tally?: Tally,
): Answer {
  let memory: Memory = emptyMemory();
  const put = (hour: number, text: string): Answer => {
    const done = converse(memory, messageAt(rig, hour, text));
    memory = done.memory;
    return done.answer;
  };
  put(toldHour, told);
  for (const { atHour, text, means } of readings) {
    if (tally) {
      const message = messageAt(rig, atHour, text);
      const kept = memory;
      const heard = hear(kept, message);
      tally.learnMs += cpuMs(() => {
        for (let times = 0; times < 20; times++) learnt(kept, message, heard);
      });
      tally.learnCalls += 20;
      tally.answerMs += cpuMs(() => converse(kept, message));
    }
    const answer = put(atHour, text);
    if (!tally) continue;
    tally.read += 1;
    const isRead = intents.includes(answer.intent) && sorted(numbersOf(answer)) === sorted(means);
    if (!isRead) tally.misread.push(`${answer.intent}: ${text} → ${sorted(numbersOf(answer))}`);
  }
  return put(atHour, askedWords(rig));
}

/** The share that the bot leaves in the battery, as it says. */
const floorOf = ({ assumed }: Answer): number | undefined => {
  const depth = assumed.find(({ name }) => name === 'depthOfDischarge')?.value;
  return typeof depth === 'number' ? 1 - depth : undefined;
};

/** How the question is put: hours after the tenth of the fourth day, and from the level it then has, to 5 %, or another. */
export interface Asking {
  readonly laterH: number;
  readonly isFromNow: boolean;
}

export function simulate(number: number, tally: Tally, asking: Asking): Result | undefined {
  const drawn = rigOf(number);
  const atHour = askedHour + asking.laterH;
  const course = courseOf(drawn, toldHour, atHour);
  const nowPercent = 5 * Math.round(20 * present(course.level.at(-1)));
  const rig = asking.isFromNow ? { ...drawn, askedPercent: nowPercent } : drawn;
  // Nearer to the floor than that, the question is asked by nobody.
  if (rig.askedPercent < (rig.chemistry === 'agm' ? 65 : 40)) return undefined;
  const readings = readingsOf(rig, course);
  const answers = {
    before: talk(rig, atHour, toldWords(rig), []),
    after: talk(
      rig,
      atHour,
      toldWords(rig),
      readings.map(({ right, wrong }) => wrong ?? right),
      tally,
    ),
    clean: talk(
      rig,
      atHour,
      toldWords(rig),
      readings.map(({ right }) => right),
    ),
    informed: talk(rig, atHour, toldWords(rig, true), []),
  };
  const asked = (which: keyof typeof answers): Asked | undefined => {
    const answer = answers[which];
    const [figure, floor] = [answer.figures.runTime, floorOf(answer)];
    const isFigure = figure && 'value' in figure && typeof figure.value === 'number';
    if (answer.intent !== 'run-time' || !isFigure || floor === undefined) {
      tally.unanswered.push(`${which} of rig ${number}: ${answer.intent}: ${answer.text.split('\n')[0]}`);
      return undefined;
    }
    const truthH = trueRunTimeH(rig, course.draw, atHour, floor);
    const {
      value: valueH,
      low = valueH,
      high = valueH,
    } = figure as { value: number; low?: number; high?: number };
    const bias = valueH / truthH - 1;
    const isHeld = truthH >= low && truthH <= high;
    return { error: Math.abs(bias), bias, isHeld, width: (high - low) / valueH, valueH };
  };
  const [before, after, clean, informed] = [
    asked('before'),
    asked('after'),
    asked('clean'),
    asked('informed'),
  ];
  if (!(before && after && clean && informed)) return undefined;
  if (Number.isNaN(after.error)) {
    tally.outside.push(number);
    return undefined;
  }
  const wrong = readings.filter(({ wrong: bad }) => bad).length;
  const stale = readings.filter(({ isStale }) => isStale).length;
  const truthH = after.valueH / (1 + after.bias);
  const floor = present(floorOf(answers.after));
  const known = Math.abs(trueRunTimeH(rig, drawA(usual(rig)), atHour, floor) / truthH - 1);
  const hasAmpsLast = readings.at(-1)?.right.means.netCurrentA !== undefined;
  return {
    rig,
    truthH,
    known,
    hasAmpsLast,
    before,
    after,
    clean,
    informed,
    wrong,
    sent: readings.length,
    stale,
    wasCut: course.wasCut,
  };
}

if (import.meta.main) {
  const rigs = Number(process.argv.slice(2).find(word => /^\d+$/.test(word)) ?? 200);
  const asking = {
    laterH: process.argv.includes('--later') ? 14 : 0,
    isFromNow: process.argv.includes('--now'),
  };
  const tally: Tally = {
    read: 0,
    misread: [],
    unanswered: [],
    outside: [],
    learnMs: 0,
    learnCalls: 0,
    answerMs: 0,
  };
  const results = Array.from({ length: rigs }, (_, number) => simulate(number, tally, asking)).filter(
    result => result !== undefined,
  );
  console.log(report(results, tally));
}
