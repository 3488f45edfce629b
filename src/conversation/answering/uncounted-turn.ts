import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import { isSpoken } from '#basics/spoken.ts';
import type { Intent } from '#intents/intent.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { Interpreted } from '../interpret.ts';
import { isAsking } from '../turns/asking.ts';
import { opensTurn } from '../turns/lean.ts';

// A line after an answer that tells no fact: is the answer doubted, guessed, asked after, or turned by what can't be counted?

/** How such a line stands to the answer. */
type Standing = 'doubts' | 'agrees' | 'asks' | 'turns';
type Said = Pick<Reply, 'verdict' | 'headline'>;

const doubting: ReadonlySet<string> = new Set(
  'sure really seriously certain positive honestly truly still wrong bull bulldust rubbish nonsense'.split(
    ' ',
  ),
);
const idle: ReadonlySet<string> = new Set(
  'so then ok okay right and but oh hm hmm well it that they we'.split(' '),
);
/** Words that guess or say no, and what may stand behind them: "no sun then" says something else. */
const denying: ReadonlySet<string> = new Set('no nope nah wont cant doesnt isnt not never'.split(' '));
const afterDenial: ReadonlySet<string> = new Set(
  'way chance then for last make do work cope fit enough'.split(' '),
);
const questioning: ReadonlySet<string> = new Set('what which how who whose'.split(' '));
const pointing: ReadonlySet<string> = new Set('that this these those'.split(' '));
/** So few words name nothing new: "that wide??". */
const mostBare = 2;
/** A guess is a short line. */
const mostGuess = 8;

/** Whether an answer says no, or probably not. */
const saysNo = ({ verdict, headline }: Said): boolean =>
  verdict === 'no' || headline.startsWith('Probably not');

/** "So not 450?": a figure is denied that the answer doesn't hold. */
const deniesFigure = ({ recognised: { words, mentions } }: Heard, { headline }: Said): boolean =>
  mentions.some(
    one =>
      (one.kind === 'number' || one.kind === 'amount') &&
      words[one.from - 1] === 'not' &&
      !headline.includes(`${one.value}`),
  );

/** Whether a line begins by denying and names nothing that is taken away: "so no?", "it won't", "so not 450?". */
function isDenial({ recognised: { words } }: Heard): boolean {
  const at = words.findIndex(word => isSpoken(word) && !idle.has(word));
  const next = words[at + 1] ?? '';
  return denying.has(words[at] ?? '') && (!isSpoken(next) || afterDenial.has(next));
}

/** How a line that tells no fact stands to the answer, which it doesn't change. */
export function standingOf(heard: Heard, said: Said): Standing {
  const words = heard.recognised.words.filter(isSpoken);
  if (words.some(word => doubting.has(word))) return 'doubts';
  if (isDenial(heard) && words.length <= mostGuess)
    return saysNo(said) || deniesFigure(heard, said) ? 'agrees' : 'doubts';
  // "You said 10 before."
  if (heard.claims.length > 0) return 'doubts';
  if (heard.cues.has('what-if')) return 'turns';
  // "Can't bring it after all" takes something away.
  const first = words.find(word => !idle.has(word)) ?? '';
  if (denying.has(first) && !heard.cues.has('question-mark')) return 'turns';
  if (isAsking(heard) || words.some(word => questioning.has(word))) return 'asks';
  if (opensTurn(heard)) return 'turns';
  if (words.length <= mostBare) return 'doubts';
  const isPointing = heard.cues.has('question-mark') && words.some(word => pointing.has(word));
  return isPointing ? 'asks' : 'turns';
}

const seasons: ReadonlySet<string> = new Set('summer winter autumn spring'.split(' '));

/** What a season would change of an answer, and must be told for it; undefined where none is named. */
function seasonAsked({ recognised: { words } }: Heard, facts: Stated, { takes }: Intent): string | undefined {
  const season = words.find(word => seasons.has(word));
  if (season === undefined) return undefined;
  const hasSun = facts.solar !== undefined || !takes.includes('ambientC') || !facts.batteries;
  if (takes.includes('month') && hasSun && facts.place === undefined && facts.latitudeDeg === undefined)
    return english.say('season-where', 'The {season} sun hangs on the place: tell me where you camp.', {
      season,
    });
  return takes.includes('ambientC') && facts.ambientC === undefined
    ? english.say('season-warmth', 'Tell me how warm it gets then (say “10 °C”), and I count that.')
    : undefined;
}

/** An answer that a line leaves as it was, under a first line that says so. */
const under = (reply: Reply, headline: string): Reply => ({
  ...reply,
  headline,
  lines: [english.say('without-it', 'Without it: {same}', { same: reply.headline }), ...(reply.lines ?? [])],
});

/** The answer before once more, to a line that tells no fact: it never says that nothing changes where that isn't known. */
export function toldNothing(reply: Reply, { heard, facts, intent }: Interpreted): Reply {
  const season = seasonAsked(heard, facts, intent);
  if (season !== undefined) return under(reply, season);
  const standing = standingOf(heard, reply);
  const same = { same: reply.headline };
  switch (standing) {
    case 'doubts':
      return { ...reply, headline: english.say('still-so', 'Still the same. {same}', same) };
    case 'agrees':
      return { ...reply, headline: english.say('as-guessed', 'That’s right. {same}', same) };
    case 'asks':
      return isOfVerdict(heard, reply) ? reply : { ...reply, headline: asBefore(same) };
    case 'turns':
      // A fault has no sum that anything could go into.
      return intent.name === 'fault'
        ? { ...reply, headline: asBefore(same) }
        : under(reply, uncounted(intent));
  }
}

const asBefore = (same: { readonly same: string }): string =>
  english.say('as-before', 'As before: {same}', same);

/** "Is that enough?": the yes or no of the answer before answers it as it stands. */
const isOfVerdict = ({ recognised: { words } }: Heard, { verdict }: Reply): boolean =>
  (verdict ?? null) !== null &&
  words.some(word => pointing.has(word)) &&
  !words.some(word => questioning.has(word));

/** That something was heard and goes into no sum. */
const uncounted = ({ takes }: Intent): string =>
  takes.includes('loads')
    ? english.say(
        'uncounted-use',
        'I can’t count that in without a figure: its watts, amps, hours a day or °C.',
      )
    : english.say('uncounted', 'I can’t count that in.');
