import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';

type Wear = 'old' | 'tired';

/** Words by which people call a battery worn or old; the worse first. */
const phrases: readonly (readonly [wear: Wear, said: readonly string[]])[] = [
  [
    'tired',
    [
      'tired',
      'knackered',
      'worn',
      'weak',
      'dying',
      'stuffed',
      'shagged',
      'half dead',
      'last legs',
      'past it',
      'past its best',
      'seen better days',
      'on the way out',
    ],
  ],
  ['old', ['old', 'ageing', 'aging', 'elderly', 'ancient', 'second hand', 'secondhand', 'not new']],
];

/** What links a battery to words behind it: "the AGM is getting old". */
const links: ReadonlySet<string> = new Set([
  'is',
  'are',
  'was',
  'thats',
  'that',
  'which',
  'looks',
  'seems',
  'feels',
  'has',
  'have',
  'its',
  'theyre',
  'getting',
]);

/** How many words before and behind a battery are looked at. */
const reach = { before: 3, behind: 7 } as const;

const isBattery = ({ kind, unit }: Mention): boolean =>
  kind === 'battery' || kind === 'chemistry' || (kind === 'amount' && unit === 'Ah');
/** What may stand between the words and the battery: "old 12V 100Ah AGM". */
const isPassed = (one: Mention): boolean =>
  isBattery(one) ||
  ['word', 'noun', 'number'].includes(one.kind) ||
  (one.kind === 'amount' && one.unit === 'V');

/** The words right before a battery, and those that a link ties to it, up to anything else. */
function wordsAbout(battery: Mention, { mentions, words }: Recognised): string[] {
  const at = mentions.indexOf(battery);
  const taken = (from: number, step: 1 | -1, most: number): string[] => {
    const found: string[] = [];
    for (let i = from; found.length < most; i += step) {
      const one = mentions[i];
      if (!one || !isPassed(one)) break;
      if (one.kind === 'word') found.push(words.slice(one.from, one.to).join(' '));
    }
    return step === 1 ? found : found.reverse();
  };
  const behind = taken(at + 1, 1, reach.behind);
  return [
    ` ${taken(at - 1, -1, reach.before).join(' ')} `,
    links.has(behind[0] ?? '') ? ` ${behind.join(' ')} ` : '',
  ];
}

const known = new WeakMap<Recognised, Wear | 'none'>();

/** How worn the words call a battery; looked for once a message, though each of its readings asks. */
function wearSaid(recognised: Recognised): Wear | undefined {
  let wear = known.get(recognised);
  if (wear === undefined) {
    const about = recognised.mentions.filter(isBattery).flatMap(one => wordsAbout(one, recognised));
    wear =
      phrases.find(([, said]) =>
        said.some(phrase => about.some(text => text.includes(` ${phrase} `))),
      )?.[0] ?? 'none';
    known.set(recognised, wear);
  }
  return wear === 'none' ? undefined : wear;
}

/** The batteries told, with how worn the words beside them call them; years that were told say more. */
export function withWearTold(batteries: NonNullable<Stated['batteries']>, recognised: Recognised) {
  const wear = wearSaid(recognised);
  if (!wear) return batteries;
  return batteries.map(battery =>
    battery.role === 'starter' || battery.ageYears !== undefined ? battery : { ...battery, wear },
  );
}
