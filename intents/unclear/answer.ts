import type { Reply } from '#answer/reply.ts';
import { listIn } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { describeBattery, describeCharger, describeLoad } from '../describe.ts';
import type { RequestContext } from '../intent.ts';

/** What was understood all the same, so that the person only has to add to it. */
function heard({ parsed }: RequestContext, w: Speech): string[] {
  const { batteries = [], loads = [], chargers = [], solar = [] } = parsed.facts;
  const panel = w.say('solar', 'solar');
  return [
    ...batteries.map(battery => describeBattery(battery, w)),
    ...loads.map(load => describeLoad(load, w)),
    ...chargers.map(charger => describeCharger(charger, w)),
    ...solar.map(s => (s.powerW ? `${s.powerW} W ${panel}` : panel)),
  ];
}

const mostWordsOfNumber = 3;

/** One short question back, to the point where anything was understood. */
export function answerUnclear(setting: RequestContext): Reply {
  const { cues, words, unread } = setting.parsed;
  const w = english;
  const help = w.say('next-help', 'help');
  const sample = w.say('sample', 'Try “fridge 1.2A, 100Ah, 3 days?” or say “help”.');
  const parts = heard(setting, w);
  if (parts.length > 0)
    return {
      headline: w.say(
        'i-got',
        'I got {parts}. What would you like to know: how long it lasts, what to fit, or how to charge it?',
        { parts: listIn(parts.slice(0, 4), w) },
      ),
      next: [
        w.say('next-lasts', 'how long will it last?'),
        w.say('next-solar', 'what solar do I need?'),
        w.say('next-save', 'save it as my rig'),
      ],
    };
  if (cues.has('thanks'))
    return { headline: w.say('welcome', 'You’re welcome. Anything else on power?'), next: [help] };
  if (cues.has('greeting'))
    return {
      headline: w.say('hello', 'Hello! What can I work out for you?'),
      lines: [sample],
      next: [help],
    };
  const [number] = unread;
  if (number !== undefined && words <= mostWordsOfNumber) {
    const text = '{number} of what: amps, amp hours, watts, volts, hours?';
    return { headline: w.say('number-of-what', text, { number: number.text }), lines: [sample] };
  }
  return {
    headline: w.say('no-question', "I didn't get a power question out of that. What would you like to know?"),
    lines: [sample],
    next: [help],
  };
}
