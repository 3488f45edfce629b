import { hourOfDay } from '#answer/clock.ts';
import { exactly } from '#answer/say.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { amountsOf } from '../figures-told.ts';
import { hourNamed } from '../moments.ts';

/** What shows a stage, and how it is asked whether that is as it should be; `-`: what it means is another question. */
const shows = 'mppt|pwm|controller|regulator|reg|charger|dcdc|dc_dc|dc_to_dc|b2b|solar|converter';
const asks =
  'normal|wrong|ok|okay|right|problem|worry|worried|bad|broken|broke|fault|faulty|good|issue|fine|busted|dead|stuffed|cactus|crook|should_it|supposed|concerned|concern|trouble|dodgy|rooted|odd|weird';
const others = '-what_does|what_is|whats|meaning|means|difference|volt*|fridge|versus|vs';

/** Asked after a fault the answer begins with no, asked whether it is right with yes. */
const doubting: ReadonlySet<string> = new Set(
  'wrong problem worry worried bad broken broke fault faulty issue busted dead stuffed cactus crook concerned concern trouble dodgy rooted odd weird'.split(
    ' ',
  ),
);
const fine = (mentions: readonly Mention[]): string =>
  mentions.some(({ text }) => doubting.has(text)) ? 'No, that’s fine' : 'Yes, that’s fine';

const kindOf = ({ batteries = [] }: Facts, mentions: readonly Mention[]): Chemistry | undefined =>
  (mentions.find(({ kind }) => kind === 'chemistry')?.key as Chemistry | undefined) ??
  batteries.find(({ chemistry }) => chemistry)?.chemistry;

/** Under this a battery is not full, %. */
const fullPercent = 95;
const percentOf = (mentions: readonly Mention[]): number | undefined =>
  amountsOf(mentions, 'percent')[0]?.value;
const hoursOf = (mentions: readonly Mention[]): number | undefined => amountsOf(mentions, 'time')[0]?.value;

/** Hours of absorption that are usual at most. Common practice: makers' sheets of chargers and batteries. */
const absorptionH = { lead: 6, lithium: 2 } as const;

function absorption(facts: Facts, mentions: readonly Mention[]): string {
  const hours = hoursOf(mentions);
  const kind = kindOf(facts, mentions);
  const usual =
    kind === 'lfp'
      ? 'on lithium it takes an hour or two at most'
      : 'on lead-acid it takes 2 to 6 hours, on lithium one or two';
  if (hours === undefined) return `${fine(mentions)}: ${usual}.`;
  const most = kind === 'lfp' ? absorptionH.lithium : absorptionH.lead;
  return hours <= most
    ? `${fine(mentions)}, ${exactly(hours)} can be: ${usual}.`
    : `${exactly(hours)} is long: ${usual}.`;
}

function equalise(facts: Facts, mentions: readonly Mention[]): string {
  const kind = kindOf(facts, mentions);
  if (kind === 'flooded')
    return 'No worry on a wet battery, a few hours every month or so: vent it, and top it up after.';
  return kind === undefined || kind === 'lead-acid'
    ? 'Only wet (flooded) batteries want that: on AGM, gel or lithium switch it off now.'
    : `Switch it off: equalising is for wet batteries only, and harms ${kind === 'lfp' ? 'lithium' : kind === 'agm' ? 'AGM' : 'gel'}.`;
}

/** "Float at 11 am": good, as it was full by then. */
function atFloat(_: Facts, mentions: readonly Mention[]): string {
  const clock = mentions.find(({ kind }) => kind === 'clock');
  const hour = clock && hourNamed(clock.key);
  const isDay = hour !== undefined && hour >= 5 && hour < 21;
  const when = isDay && /\d/.test(clock?.key ?? '') ? ` at ${hourOfDay(hour)}` : '';
  const by = when === '' ? 'it counts the battery as full' : 'the battery was full by then';
  if (mentions.some(({ text }) => text === 'good')) return `Good: float${when} means ${by}.`;
  return mentions.some(({ text }) => doubting.has(text))
    ? `No, that’s good: float${when} means ${by}.`
    : `Yes, that’s good: float${when} means ${by}.`;
}

/** The stages that chargers and controllers show, and whether each is as it should be. Common practice. */
export const chargerStates: readonly Aside[] = [
  {
    name: 'float-yet-not-full',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [`${shows} float|floating|in_float|on_float ${others}`],
    when: (_, { recognised: { mentions } }) => (percentOf(mentions) ?? fullPercent) < fullPercent,
    says: (_, mentions) =>
      `They don’t agree: float means full, ${decimals(percentOf(mentions) ?? 0, 0)} % means not. One of them is off.`,
    lines: [
      'Let it rest an hour with nothing on: 12.7 V on lead-acid, 13.3 V on lithium is full. Then set the monitor to 100 %.',
      'Lower? Then float comes too soon: its battery type is set wrong, or its cable to the battery is thin.',
    ],
    next: ['what is float?'],
  },
  {
    name: 'float-on-a-short-drive',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [`dcdc|dc_dc|dc_to_dc|b2b float|floating ${asks}|minutes|after|already|straight_away ${others}`],
    says: 'Fine if it was nearly full when you left: float means full. If it was low, that is far too soon.',
    lines: [
      'Too soon: its battery type is set wrong, or thin cable to the battery lifts its volts. Check both.',
      'Read the battery an hour after the drive, with nothing on: 12.7 V on lead-acid, 13.3 V on lithium is full.',
    ],
    next: ['what is float?'],
  },
  {
    name: 'float-is-good',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      `${shows} float|floating ${asks} ${others} -never|wont|before|not_float|no_float|wasted|all_night`,
    ],
    says: atFloat,
    lines: [
      'It is only held full at about 13.5 V, and still runs what you use by day: switch a load on, and the amps rise.',
      'Low that morning all the same? Then it floats too soon: check its battery type, and for thin cable.',
    ],
    next: ['what is float?', 'what is absorption?'],
  },
  {
    name: 'bulk-for-days',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      `${shows} bulk|boost days|days_running|in_a_row|for_days|week|weeks|every_day|never_leaves|never_gets ${others}`,
    ],
    says: 'Not right for days on end: as much goes out as comes in, or it can’t bring the battery’s volts up.',
    lines: [
      'Switch all off for a sunny day: if it leaves bulk then, add panel or charge time, or use less.',
      'Still bulk? Over 0.3 V between it and the battery is thin cable; a warm battery that never fills is worn: stop.',
    ],
    cautions: ['battery-gas'],
    next: ['what is absorption?', 'what solar do I need?'],
  },
  {
    name: 'bulk-all-day',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      `${shows} bulk|boost stuck|all_day|day|still|always|hours|only|never|stays|${asks} ${others} -mode_button|button|red|green|light`,
    ],
    says: 'Normal on a low battery or a dull day: bulk means it takes all there is, and isn’t near full yet.',
    lines: [
      'On a good day it should get to absorption, 14.2 to 14.6 V. Never? Too little panel or time, shade, or loads that eat it.',
      'Watch the volts at the battery: rising all day is right, stuck under 13 V in full sun is not.',
    ],
    next: ['what is absorption?', 'what solar do I need?'],
  },
  {
    name: 'absorption-for-hours',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      `${shows} absorption|absorb|absorbtion stuck|all_day|day|still|hours|always|for|${asks} ${others} -fridge*`,
    ],
    says: absorption,
    lines: [
      'The amps tell: they should fall and fall. At 1 to 2 % of its Ah it is full, and float should follow.',
      'Loads that run meanwhile hold it there. Amps that stay high with nothing on mean a worn battery: if it’s hot, stop.',
    ],
    cautions: ['battery-gas'],
    next: ['what is absorption?'],
  },
  {
    name: 'equalise-shown',
    isAsked: 'for-sure',
    spots: [
      `${shows} equalis*|equaliz*|eq ${asks}|should ${others} -mistake|accident*|wrecked|ruined|how_often|yes_or_no|once_a|monthly`,
    ],
    says: equalise,
    lines: [
      'Set its battery type to yours, or equalise to off: it holds 15 V and more, which dries sealed ones out.',
      'Things that are on don’t like 15 V either: switch them off while it does.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'off-by-night',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      `mppt|pwm|controller|regulator|reg|solar standby|stand_by|off|sleep|sleeps|sleeping|asleep|idle|zero|nothing|blank|night_mode|goes_dark|stops night|at_night|dark|after_dark|evening|sunset|dusk|sundown|overnight ${asks} ${others} -battery_dead|drain*|flat|light|lights|lamp`,
    ],
    says: (_, mentions) =>
      `${fine(mentions)}: without sun it has nothing to charge with, and it wakes by itself at dawn.`,
    lines: [
      'It takes a few thousandths of an amp for itself, no more. A blank screen by night is common too.',
      'Still so at ten in full sun? Then look at the panel’s plug and fuse.',
    ],
    next: ['what is an MPPT?'],
  },
  {
    name: 'off-while-parked',
    isAsked: 'for-sure',
    spots: [
      `dcdc|dc_dc|dc_to_dc|b2b standby|stand_by|off|sleep|sleeps|asleep|idle|no_light|no_lights engine_off|engines_off|parked|ignition_off|key_off|turned_off|camp|stopped ${asks} ${others}`,
    ],
    says: (_, mentions) =>
      `${fine(mentions)}: it only works while the engine runs, and saves the starter battery else.`,
    lines: [
      'With the engine on for a minute or two it must come on: if not, look at its ignition wire and its feed.',
    ],
    next: ['dcdc not charging'],
  },
];
