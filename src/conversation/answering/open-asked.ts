import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import type { Interpreted } from '../interpret.ts';

/** Words that ask for something other than a yes or no, where they open a question. */
const openers: ReadonlySet<string> = new Set(['what', 'whats', 'which', 'how', 'where', 'when', 'why']);
/** What, right behind, asks for a yes or no all the same, or turns a question: "what if", "how about", "what do you reckon". */
const closers: ReadonlySet<string> = new Set('if about come with do you dya say says'.split(' '));
/** How far into a message its question may open: "so what", "ok and how". */
const nearStart = 3;

/** Whether a message asks openly: "what does that change?", "what would I burn in a day?". */
function isOpen({ recognised: { words }, cues }: Interpreted['heard']): boolean {
  const at = words.findIndex(word => openers.has(word));
  const next = words[at + 1] ?? '';
  return at >= 0 && at < nearStart && !closers.has(next) && !cues.has('ask-can-it');
}

/** A reply without the yes or no before it, where no yes or no was asked for: the question that it turns had one. */
export function askedOpenly(reply: Reply, { heard, intent }: Interpreted): Reply {
  if (intent.isArgument || Object.keys(reply.figures ?? {}).length === 0 || !isOpen(heard)) return reply;
  const found = /^(As before: |No change\. )?(?:Yes|No)[,:] (.*)$/s.exec(reply.headline);
  return found ? { ...reply, headline: `${found[1] ?? ''}${sentence(found[2] ?? '')}` } : reply;
}
