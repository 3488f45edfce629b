import type { ParsedMessage } from '#language/reading.ts';
import { isSpotted } from '../spotting.ts';
import { asksMeaning, mentioned } from './match.ts';
import type { Term } from './terms.ts';

/** Who needs such a thing, by its term. Common practice. */
const needed: Readonly<Record<string, string>> = {
  mppt: 'For one small 12 V panel a PWM does; take an MPPT from about 150 W on, in the cold, or for house panels.',
  pwm: 'It does for one small 12 V panel; from about 150 W on, or for house panels, take an MPPT.',
  'solar regulator': 'Yes, any panel over about 10 W needs one: without it the battery is overcharged.',
  bms: 'Lithium must have one, and a camping battery has it inside; lead-acid needs none.',
  shunt:
    'Worth it: it alone tells how much is left, above all on lithium. AGM gets by with a voltmeter at rest.',
  'battery monitor':
    'Worth it: a shunt monitor alone tells how much is left, above all on lithium. AGM gets by with a voltmeter at rest.',
  'dc-dc charger':
    'With a second battery and a car since about 2010, or lithium, yes. With no second battery, no.',
  isolator:
    'Only with a second battery that the engine charges; a newer car or lithium wants a DC-DC charger.',
  vsr: 'Only with a second battery that the engine charges; a newer car or lithium wants a DC-DC charger.',
  fuse: 'Yes, each cable that leaves a battery needs one, within a hand’s width of the post.',
  'circuit breaker':
    'It may stand in for a fuse where it is rated for DC and the amps; one of the two it must be.',
  inverter: 'Only for what has no 12 V or USB lead: phones, lights, fridges and most laptops need none.',
  'pure sine wave':
    'Take it for motors, microwaves, chargers and anything medical; plain heaters and lamps do without.',
  'modified sine wave':
    'Better not: motors, microwaves, chargers and anything medical may run hot or fail on it.',
  busbar: 'From about four cables on one post it is tidier and safer; below that the posts do.',
  rcd: 'Yes, wherever there is mains in the van; a licensed electrician fits it.',
  'mains charger':
    'If you camp with hook-up or a generator, yes; with enough sun and driving you can do without.',
  'two-pole connector':
    'For anything over about 10 A that you plug in and out, yes: a lighter plug melts at that.',
  alternator:
    'The car has one already: it charges the starter battery, and a second one through a DC-DC charger.',
  'battery bank': 'Only where one battery isn’t enough: all of one kind, size and age.',
};

/** What letters stand for, where the explanation doesn't say so. */
const letters: Readonly<Record<string, string>> = {
  mppt: 'maximum power point tracking',
  pwm: 'pulse width modulation',
  agm: 'absorbent glass mat',
  vsr: 'voltage sensitive relay',
  awg: 'American wire gauge',
  rcd: 'residual current device',
};

const asksNeed: readonly string[] = [
  'do_i_need|do_we_need|do_you_need|need_one|need_it|need_a|want_one|should_i_get|should_i_have|should_we_get|is_it_worth|worth_it|worth_having|worth_getting|are_they_worth',
];
const asksLetters: readonly string[] = ['mean|means|meaning|stand_for|stands_for|short_for|letters|acronym'];
/** In a longer message the two stand too far apart to be of one thing. */
const mostWords = 20;

type Spoken = Pick<ParsedMessage, 'recognised'>;

/** The term of which it is asked both what it is and whether one needs it, and who does. */
export function neededTerm({ recognised: { words } }: Spoken): readonly [Term, needed: string] | undefined {
  if (words.length > mostWords || !isSpotted(words, asksNeed) || !isSpotted(words, asksMeaning))
    return undefined;
  const [first] = mentioned(words.join(' '));
  const says = first && needed[first.key];
  return first === undefined || says === undefined ? undefined : [first, says];
}

/** "MPPT is short for maximum power point tracking.", where that is asked. */
export function lettersOf({ key, says }: Term, { recognised: { words } }: Spoken): string | undefined {
  const full = letters[key];
  if (full === undefined || !isSpotted(words, asksLetters)) return undefined;
  return says.join(' ').toLowerCase().includes(full.toLowerCase())
    ? undefined
    : `${key.toUpperCase()} is short for ${full}.`;
}
