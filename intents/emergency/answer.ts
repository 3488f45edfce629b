import type { Reply } from '#answer/reply.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { emergencies, type HazardCode } from '#rig/hazard-codes.ts';
import { spotted } from '../spotting.ts';

/** What to do now, by what the words tell, where it is known closer than "something is wrong". */
interface FirstAid {
  /** In the patterns of `spotting.ts`. */
  readonly spots: readonly string[];
  readonly says: string;
  readonly lines: readonly string[];
}

const call = 'Call the emergency number if you feel ill, or see smoke or fire: 000, 111, 999, 112 or 911.';

/** First aid as poison centres advise; the rest common practice of fire services. */
const table: readonly FirstAid[] = [
  {
    spots: [
      'alarm|alarms co|carbon_monoxide|monoxide|chirp*|beep*|faulty|old|went_off|going_off|headache',
      'alarm|alarms -fridge -inverter -car -battery',
    ],
    says: 'Trust the alarm: everybody out into fresh air now, and nobody sleeps in there until it’s found.',
    lines: [
      'Headache, dizziness or sickness: call the emergency number (000, 111, 999, 112 or 911).',
      'A new alarm costs little. Heater, exhaust and generator are looked at by a licensed person first.',
    ],
  },
  {
    spots: [
      'acid|battery|corrosion|it|some hand|hands|skin|eye|eyes|face|arm|fingers|leg -smoke -fire -swollen -shock* -tingl*',
      'touched skin|it|my',
    ],
    says: 'Rinse it with running water for 20 minutes now; an eye above all, lids held open.',
    lines: [
      'Take off what it wetted. In an eye, or a burn that hurts: call the emergency number (000, 111, 999, 112 or 911).',
      'Baking soda is for the battery’s posts, not for skin.',
    ],
  },
  {
    spots: ['swollen|swell*|bulg*|bloated|puffed*|pillow|cushion|fat -wet_feet'],
    says: 'Don’t use or charge it again: a swollen battery can burst or burn. Keep away from it.',
    lines: [
      'Switch off what is on it only if it is cool. Outside, clear of people, it can wait for the recycler.',
      'Hot, hissing or smoking: get everybody away and call the fire service (000, 111, 999, 112 or 911).',
    ],
  },
  {
    spots: ['hiss*|bubbl*|boil*|gassing|fizz*'],
    says: 'Stop the charging now, from the wall or the switch; no flame or spark, doors open, and keep away.',
    lines: [
      'Let it cool outside or aired for hours, and don’t charge it so again: the charger or the battery is at fault.',
      'Hot, swollen or smoking: get everybody away and call the fire service (000, 111, 999, 112 or 911).',
    ],
  },
  {
    spots: ['tingl*|zap*|shock*|prickl*|buzz_off inverter|case|tap|metal|van|touch*|it'],
    says: 'Don’t touch it again: switch it off at the battery or pull the plug at the post.',
    lines: [
      'Stays off until a licensed electrician has found the leak. After a shock see a doctor, even if you feel fine.',
    ],
  },
  {
    spots: [
      'covered|on_top|sleeping_bag|sleeping_bags|blanket*|clothes|pillow|piled charg*|power_station|powerstation|inverter|charger',
    ],
    says: 'Take it off now: what charges under covers overheats and can burn. Unplug it first.',
    lines: [
      'A hand’s width of air all round, on a hard floor. Hot, smelly or swollen: outside, and keep away.',
      call,
    ],
  },
  {
    spots: [
      'sleep*|bed|tent|swag|cupboard wet|flooded|acid|caps|lead -heater -stove -bbq -gas_heater -generator -genny -engine -motor -idl*',
    ],
    says: 'Not where you sleep: a wet battery on charge gives off explosive gas and acid mist.',
    lines: [
      'Charge it outside, or in a box vented to the outside. A sealed AGM or a lithium may be in the van.',
      call,
    ],
  },
  {
    spots: ['tent|bed|swag|asleep|sleep charg* -heater -stove -bbq -generator -genny -engine -motor -idl*'],
    says: 'Better outside: a wet battery gasses on charge, and any that fails while charging can burn.',
    lines: [
      'If it must be inside, a sealed or lithium one in good order, uncovered, away from where you lie.',
      call,
    ],
  },
];

/** What to do now where a danger is seen that is none of life and limb: it stands beside that danger's own lines, and alone. */
const ofDanger: Partial<Record<HazardCode, string>> = {
  'mains-wiring': 'Felt a shock? Off at the post first, and see a doctor, even if you feel fine.',
  'mains-lead': 'Felt a shock? Off at the post first, and see a doctor, even if you feel fine.',
  backfeed: 'Plugged in already? Switch the supply off first; don’t touch the bare end.',
  'bigger-fuse':
    'Warm or smelling already? Take the battery’s plus off if you can do it safely, and leave it off.',
  'no-fuse': 'Until it has its fuse, leave that cable off the battery.',
  'over-current': 'Warm or smelling? Switch it off now, and leave it off until it’s put right.',
  'cold-charge':
    'Done already? Stop the charge and warm it. If it swells, heats or holds less from now on, it’s spoilt.',
  'generator-inside':
    'Running there now? Everybody out into fresh air first. Headache or dizziness: 000, 111, 999, 112 or 911.',
  'mixed-parallel':
    'Joined already? Take them apart again, minus first; hot or swollen, keep away and call for help.',
  'jump-start': 'Warm, hissing or swollen? Take nothing off, keep away and call for help.',
};

/**
 * The one thing to do now: by the danger seen, where it is none of life and limb, else by what the words tell, else
 * out, air, help. No figures and nothing to tap. Common practice of fire services.
 */
export function answerEmergency({
  hazards,
  recognised,
}: Pick<ParsedMessage, 'hazards' | 'recognised'>): Reply {
  const danger = hazards.some(code => emergencies.has(code))
    ? undefined
    : hazards.find(code => ofDanger[code]);
  const says = danger && ofDanger[danger];
  if (says) return { headline: says };
  const now = spotted(recognised.words, table, ({ spots }) => spots);
  if (now) return { headline: now.says, lines: now.lines };
  return {
    headline:
      'Stop, get everybody out and well away into fresh air, then call the emergency number (000, 111, 112 or 911).',
    lines: [
      'Don’t go back in, and don’t touch, move or switch anything to save gear.',
      'Once all are safe: use none of it again until a licensed person has looked at it.',
    ],
  };
}
