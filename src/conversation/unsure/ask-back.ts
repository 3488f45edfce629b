import { issueSentence } from '#answer/issues.ts';
import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import type { Speech } from '#answer/speech.ts';
import type { Intent } from '#intents/intent.ts';
import type { Issue } from '#language/issue.ts';
import type { Two } from './two-readings.ts';

/** Something missing: as the bot asks for it, and the key of that sentence. */
export interface Missing {
  readonly ask: string;
  readonly key?: string;
}

/** What a question misses, from its needs held against the facts. */
export function missingOf(parsed: ReturnType<Intent['needs']['safeParse']>): Missing[] {
  if (parsed.success) return [];
  return parsed.error.issues.map(({ message, key }) => ({ ask: message, key }));
}

/** What is asked for, and how it may be said, which has a line of its own: "what charges it (say “25A DC-DC”)". */
function withExample(ask: string): readonly [needs: string, example: string] {
  const at = ask.lastIndexOf(' (say ');
  return at < 0 || !ask.endsWith(')') ? [ask, ''] : [ask.slice(0, at), ask.slice(at + 6, -1)];
}

/** What is missing, asked for in one short line without examples: what the next line is read as an answer to. */
export const askedFor = (missing: readonly Missing[]): string =>
  `${missing.map(({ ask }) => withExample(ask)[0]).join(', ')}?`;

/** The one question back: what can't be right first, else what is missing, in the words of the needs. */
export function askBack(
  intent: Intent,
  missing: readonly Missing[],
  issues: readonly Issue[],
  words: Speech,
): Reply {
  const [wrong] = issues;
  if (wrong) return { headline: issueSentence(wrong, words) };
  const asks = missing.map(({ ask, key }) => (key ? words.say(key, ask) : ask));
  const title = words.say('title', intent.title);
  if (asks.length > 1) {
    const text = '{title} To work that out I need a few things. Can you tell me?';
    return { headline: words.say('need-more', text, { title }), lines: asks.map(ask => `${sentence(ask)}.`) };
  }
  const [needs, example] = withExample(asks[0] ?? '');
  return {
    headline: words.say('need', '{title} To work that out I need {needs}.', { title, needs }),
    lines: [
      example === ''
        ? words.say('can-you', 'Can you tell me?')
        : words.say('like-this', 'Say it like {example}.', { example }),
    ],
  };
}

/** Where nobody fits "hers": whose it is. */
export const askWhose = ({ say }: Speech): Reply => ({
  headline: say('whose', 'Whose do you mean? Tell me the name, or what is in it.'),
});

/** Longer than this no first line is read at a glance. */
const mostOfFirstLine = 100;

/**
 * Which of two readings is meant, or whether the one is: as buttons, each with what it would be answered. What can be
 * answered stands first: most often the likelier reading was meant, and nobody has to ask again.
 */
export function askWhich({ options: [one, other], echo, firsts = [] }: Two, { say }: Speech): Reply {
  const lineOf = (reading: string, first: string | undefined): string =>
    first === undefined
      ? say('reading-echo', '“{reading}”', { reading })
      : say('reading-first', '“{reading}” {first}', { reading, first });
  if (echo !== undefined)
    return {
      headline: say('is-it-that', 'Did I get that right?'),
      lines: [lineOf(echo, firsts[0])],
      next: [one.say, other.say],
    };
  const next = [one.say, other.say];
  const [first, second] = [lineOf(one.say, firsts[0]), lineOf(other.say, firsts[1])];
  const [top, below] = firsts[0] === undefined ? [second, first] : [first, second];
  const isAnswered = firsts.some(line => line !== undefined);
  if (isAnswered && top.length <= mostOfFirstLine)
    return { headline: top, lines: [below, say('which-meant', 'Which do you mean?')], next };
  return {
    headline: say('which-reading', 'I can take that in two ways: which do you mean?'),
    lines: isAnswered
      ? [top, below]
      : [say('two-readings', '“{one}” or “{other}”', { one: one.say, other: other.say })],
    next,
  };
}
