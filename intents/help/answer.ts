import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import type { RequestContext } from '../intent.ts';

/** The questions that help shows, in this order; the others are one tap away. */
const shown = ['run-time', 'solar-size', 'charge-time', 'inverter-check', 'cable-size', 'settle', 'rig'];

/** Help: what it does in a sentence, then one example a line, for the questions people ask most. */
export function answerHelp({ examples, kind }: RequestContext): Reply {
  const w = english;
  const all = examples();
  const says = shown.flatMap(name => all.find(e => e.intent === name)?.say ?? []);
  return {
    headline: w.say('what-i-do', 'I work out camping power: write it short, with the numbers you have. Try:'),
    lines: [
      ...says.map(say => `• ${say}`),
      w.say(
        'then',
        'Then “what if lithium?”, “make it 5 days” or “show the working”. To learn the basics, say “teach me”.',
      ),
      kind === 'group'
        ? w.say('in-a-group', 'In a group: start with /power, or reply to me.')
        : w.say('tell-once', 'Tell me your rig once and I use it from then on.'),
    ],
    next: says.slice(0, 3),
  };
}
