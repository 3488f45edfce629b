import type { Heard } from './hear.ts';

/** Words that a question opens with, also where nobody types its mark: "is that with the losses". */
const openers: ReadonlySet<string> = new Set([
  ...[
    'what',
    'whats',
    'wot',
    'wots',
    'which',
    'whichs',
    'who',
    'whos',
    'whose',
    'why',
    'how',
    'hows',
    'when',
    'where',
    'wheres',
    'y',
  ],
  ...[
    'is',
    'are',
    'was',
    'does',
    'do',
    'did',
    'can',
    'could',
    'will',
    'would',
    'should',
    'shall',
    'may',
    'has',
    'have',
  ],
  ...['isnt', 'arent', 'doesnt', 'dont', 'cant', 'couldnt', 'wont', 'wouldnt', 'shouldnt'],
]);
/** What may stand before them. */
const leads: ReadonlySet<string> = new Set(
  'so and but or ok okay right well then hey oi bot hang on wait sorry um er now please anyway'.split(' '),
);

/** Whether a message opens as questions do. */
export function opensQuestion({ recognised }: Pick<Heard, 'recognised'>): boolean {
  const first = recognised.words.find(word => /^[a-z]/.test(word) && !leads.has(word));
  return first !== undefined && openers.has(first);
}
