import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { restVoltsAt } from '#engine/battery/rest.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { isDenied } from '../denied.ts';
import type { RequestContext } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { isSpotted, spotted } from '../spotting.ts';
import { signsIn } from './signs.ts';
import { ageFinding, dayFinding, dutyFinding, levelFinding, sagFinding } from './sums/battery.ts';
import { dropFinding, fuseFinding } from './sums/cable.ts';
import { chargeFinding, driveFinding, noonFinding } from './sums/charging.ts';
import { blocksIn, type FaultCase, type Finding } from './sums/finding.ts';
import { limitFinding, loadFinding, postFinding } from './sums/inverter.ts';
import type { Asked, Cause, Symptom, Weigh } from './symptom.ts';
import { symptoms } from './symptoms-table.ts';

export { chargeRow } from '#engine/battery/charge-table.ts';

export interface Fault {
  readonly symptom: Symptom;
  /** The likeliest first, as the sums have it. */
  readonly causes: readonly [Cause, ...Cause[]];
  /** What could be worked out, what points at a cause first. */
  readonly findings: readonly Finding[];
  /** What was asked back is told already. */
  readonly isToldAll: boolean;
  /** A text of the table with the volts of the system and battery at hand. */
  readonly spoken: (text: string) => string;
}

const sums: Readonly<Record<Weigh, (about: FaultCase) => Finding | undefined>> = {
  drop: dropFinding,
  fuse: fuseFinding,
  level: levelFinding,
  day: dayFinding,
  age: ageFinding,
  sag: sagFinding,
  duty: dutyFinding,
  load: loadFinding,
  limit: limitFinding,
  post: postFinding,
  noon: noonFinding,
  charge: chargeFinding,
  drive: driveFinding,
};

/** The symptom that the words name, else the one that most of the facts point at. */
export function symptomOf(facts: Facts, named?: string): Symptom {
  const told = symptoms.find(({ name }) => name === named);
  if (told) return told;
  const signs = signsIn(facts, name => applianceOf(name)?.id);
  const general = present(symptoms.at(-1));
  const fitting = symptoms.filter(({ when }) => when.length > 0 && when.every(sign => signs.has(sign)));
  // Where as many signs point at two, the table's order counts.
  return fitting.reduce((best, one) => (one.when.length > best.when.length ? one : best), general);
}

/** A voltage read at the thing, by what the symptom makes of it. */
function readFinding({ reads }: Symptom, about: FaultCase): Finding | undefined {
  const { volts, voltsTaken } = about.told;
  if (!reads || volts === undefined || voltsTaken === 'rest') return undefined;
  const blocks = blocksIn(about);
  const [says, by] = volts < reads.volts * blocks ? reads.low : reads.fine;
  return { ...(by && { by, isCause: true }), says: `${decimals(volts, 2)} V ${says}.`, figures: {} };
}

/** The causes that told figures leave open, with what a sum points at first, and what it clears last. */
function ordered(
  { causes: all }: Symptom,
  findings: readonly Finding[],
  isOut: (cause: Cause) => boolean,
): Fault['causes'] {
  const open = all.flatMap(cause => {
    if (!isOut(cause)) return [cause];
    return cause.otherwise === undefined ? [] : [{ ...cause, likely: cause.otherwise }];
  });
  const causes = open.length > 0 ? open : all;
  const rank = ({ by }: Cause): number => {
    const own =
      by === undefined
        ? undefined
        : findings.find(finding => finding.by === by && finding.isCause !== undefined);
    return own === undefined ? 1 : own.isCause ? 0 : 2;
  };
  return [...causes].sort((a, b) => rank(a) - rank(b)) as unknown as Fault['causes'];
}

/** Resting volts (V) of a battery at a share of its charge; of both kinds where nobody told which. */
function restText(percent: number, chemistry: Chemistry | undefined, blocks: number): string {
  const at = (kind: Chemistry): string => `${decimals(blocks * restVoltsAt(percent, kind), 1)} V`;
  return chemistry === undefined ? `${at('lead-acid')} (lithium ${at('lfp')})` : at(chemistry);
}

const levels: Readonly<Record<string, number>> = {
  full: 100,
  half: 50,
  low: 20,
};

/** A text of the table with its braces filled in: volts of a 12 V system times the blocks, resting volts by name. */
const spokenFor =
  (chemistry: Chemistry | undefined, blocks: number) =>
  (text: string): string =>
    text.replace(/\{([^}]{1,20})\}/g, (_, inner: string) => {
      const percent = levels[inner];
      if (percent !== undefined) return restText(percent, chemistry, blocks);
      return blocks === 1 ? inner : inner.replace(/[\d.]+/g, volts => decimals(Number(volts) * blocks, 1));
    });

/** Whether what the question back asks for is told. */
const isTold = (by: Asked, facts: Facts): boolean =>
  ({
    volts: facts.volts !== undefined && facts.voltsTaken !== undefined,
    cable: facts.cable?.lengthM !== undefined && Object.keys(facts.cable).length > 1,
    current: facts.netCurrentA !== undefined,
    age: facts.batteries?.some(b => b.ageYears !== undefined) ?? false,
    ambientC: facts.ambientC !== undefined,
    words: false,
  })[by];

/** How people say that a battery is past its best. */
const tired = [
  'old|tired|worn|knackered|ancient|ageing|aging|past_it|on_its_last_legs|second_hand|secondhand battery|batteries|agm|gel|lead -how_old -not_old',
] as const;

/**
 * What is likely wrong, and what of it can be worked out. Gear that memory filled in and nobody spoke of is no sign
 * of a fault; it only helps to work out a figure.
 */
export function computeFault(
  facts: Facts,
  {
    mainsV,
    at,
    recalled,
    subject,
    parsed,
  }: Pick<RequestContext, 'mainsV' | 'at' | 'recalled' | 'subject' | 'parsed'>,
): Fault {
  const told = Object.fromEntries(
    Object.entries(facts).filter(([key]) => !recalled.has(key as keyof Facts)),
  ) as Facts;
  const bank = bankFor(facts);
  const { words, mentions } = parsed.recognised;
  const isOut = ({ unless }: Pick<Symptom, 'unless'>): boolean =>
    isDenied(unless, told, mentions, blocksIn({ bank, facts }));
  const named = symptomOf(told, subject);
  const symptom = isOut(named)
    ? (spotted(
        words,
        symptoms,
        ({ spots }) => spots,
        one => !isOut(one),
      ) ?? present(symptoms.at(-1)))
    : named;
  const isTired = isSpotted(words, tired);
  const about: FaultCase = { facts, told, bank, isTired, mainsV, at };
  const found = [
    readFinding(symptom, about),
    ...(symptom.weighs ?? []).map(weigh => sums[weigh](about)),
  ].filter(one => one !== undefined);
  const findings = [...found].sort((a, b) => Number(b.isCause ?? false) - Number(a.isCause ?? false));
  const chemistry = facts.batteries?.find(b => b.role !== 'starter' && b.chemistry)?.chemistry;
  return {
    symptom,
    causes: ordered(symptom, findings, isOut),
    findings,
    isToldAll: isTold(symptom.asks[1], told),
    spoken: spokenFor(chemistry, blocksIn(about)),
  };
}
