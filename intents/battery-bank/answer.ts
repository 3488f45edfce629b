import type { Reply } from '#answer/reply.ts';
import { rounded, span } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { decimals, significant } from '#quantity/round.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { chemistryName } from '../words.ts';
import type { BankFacts, JoinedBank } from './compute.ts';

/** Lithium's 12.8 V for the trade's 12 V. */
const nominalRatio = 12.8 / 12;

const exactly = (value: number) => ({ value, low: value, high: value });

/** "24 V" for people, though lithium's nominal is 25.6 V. */
const trade = ({ voltageV, chemistry }: Bank): string =>
  `${decimals(chemistry === 'lfp' ? voltageV / nominalRatio : voltageV, 0)} V`;

function how({ bank }: JoinedBank): string {
  const inSeries = bank.inSeries ?? 1;
  if (bank.count === 1) return 'One battery';
  if (inSeries === bank.count) return `${bank.count} in series`;
  return inSeries === 1
    ? `${bank.count} in parallel`
    : `${bank.count / inSeries} strings of ${inSeries} in series`;
}

/** How they are joined and what that does, where no size is told. */
export function joinedInWords(facts: BankFacts, result: JoinedBank): string {
  const { bank } = result;
  const volts = trade(bank);
  if ((bank.inSeries ?? 1) === bank.count)
    return `In series: ${bank.count} of them make ${volts}, with the amp hours of one.`;
  return (bank.inSeries ?? 1) > 1
    ? `${how(result)}: ${volts}, with the amp hours of ${bank.count / (bank.inSeries ?? 1)}.`
    : `In parallel: still ${volts}, with ${facts.batteries[0]?.count === 2 ? 'twice' : `${bank.count} times`} the amp hours.`;
}

/** Words that ask whether unlike ones may be joined. */
const ofJoining: ReadonlySet<string> = new Set('mix mixing join joining can ok okay may together'.split(' '));

/** Words for batteries joined together. */
export function answerBatteryBank(facts: BankFacts, result: JoinedBank, setting: RequestContext): Reply {
  const { bank, otherWay } = result;
  const { usableCapacity } = result.explored.figures;
  const isAskedToMix = bank.isMixed && setting.parsed.recognised.words.some(word => ofJoining.has(word));
  const isSeries = (bank.inSeries ?? 1) > 1;
  const lines = [
    `About ${rounded(usableCapacity.value)} Ah of that is for use (${span(usableCapacity.low, usableCapacity.high, 'Ah')})${bank.isChemistryAssumed ? ', if it is AGM' : ''}.`,
    isSeries
      ? `Series adds volts, not amp hours: it stores the same either way.`
      : 'Parallel adds amp hours, and the volts stay. Take plus from one end and minus from the other, so that they share the work.',
  ];
  if (otherWay && bank.count <= 4 && bank.voltageV / (bank.inSeries ?? 1) > 11)
    lines.push(
      `${isSeries ? 'In parallel' : 'In series'} it would be ${significant(otherWay.capacityAh)} Ah at ${trade(otherWay)}.`,
    );
  const cautions: CautionCode[] = loadCautions(facts, bank);
  if (!bank.isMixed && bank.count > 1) cautions.push('mixed-batteries');
  cautions.push('fuse-at-battery');
  const age = facts.batteries.length === 1 && bank.count === 1 ? facts.batteries[0]?.ageYears : undefined;
  const aged =
    age === undefined
      ? undefined
      : `About ${rounded(usableCapacity.value)} Ah for use (${span(usableCapacity.low, usableCapacity.high, 'Ah')}): at ${significant(age)} years part of its ${significant(bank.capacityAh)} Ah is gone.`;
  return {
    headline:
      aged ??
      `${isAskedToMix ? 'Better not: unlike ones share unevenly. ' : ''}${how(result)}: ${significant(bank.capacityAh)} Ah at ${trade(bank)}${bank.chemistry === 'lfp' ? ` (${decimals(bank.voltageV, 1)} V nominal)` : ''}.`,
    lines: aged
      ? ['A full charge and a measured discharge tell how much is left: stop at half by its volts.']
      : lines,
    verdict: null,
    figures: {
      bankCapacity: figure(exactly(bank.capacityAh), 'Ah'),
      bankVoltage: figure(exactly(bank.voltageV), 'V'),
      usableCapacity: figure(usableCapacity, 'Ah'),
    },
    ...reasons(result.explored),
    cautions,
    next: [
      isSeries ? 'what if in parallel?' : 'what if in series?',
      `how long will ${decimals(bank.capacityAh, 0)}Ah ${chemistryName(bank.chemistry)} run a 1A fridge`,
      'show the working',
    ],
  };
}
