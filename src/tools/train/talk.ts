import type { Stated } from '#language/decide/assemble.ts';
import type { TalkContext } from '#language/decide/features.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Group } from './groups.ts';

/** Reads one line of a talk: the question and its facts. */
export type LineReader = (text: string, context: TalkContext) => { readonly intent: string; readonly stated: Stated };

/** What the lines before a message leave for its reading. */
export function talkBefore(group: Group, read: LineReader): TalkContext {
  let context: TalkContext & { lastFrom?: string } = {};
  for (const { from, text } of group.before ?? []) {
    if (from === 'bot') context = { ...context, ...heardFromBot(text, context, read) };
    else {
      const { intent, stated } = read(text, context);
      context = afterLine(context, intent, stated, from);
    }
  }
  const { lastFrom, ...rest } = context;
  return { ...rest, isOwn: lastFrom === group.from };
}

const idle: ReadonlySet<string> = new Set(['none', 'help', 'privacy', 'forget']);

/** What a person's line leaves. */
export function afterLine(context: TalkContext, intent: string, stated: Stated, from: string): TalkContext & { lastFrom?: string } {
  const keys = Object.keys(stated);
  if (idle.has(intent)) return context;
  const hasRig = context.hasRig || intent === 'rig';
  if (intent === 'unclear' && keys.length === 0) return context;
  const loads = (stated.loads ?? []).flatMap(load => (typeof load.name === 'string' ? [load.name] : []));
  return { lastIntent: intent, lastKeys: keys, hasRig, asked: [], things: loads.length > 0 ? loads : context.things, lastFrom: from } as TalkContext & { lastFrom?: string };
}

/** What the bot's own line leaves: what it asked for, as the kinds it names. */
export function heardFromBot(text: string, context: TalkContext, read: LineReader): Partial<TalkContext> {
  const { mentions } = recognise(text);
  const isQuestion = text.includes('?');
  const asked = isQuestion ? ['?', ...kindsOf(mentions)] : [];
  const named = mentions.filter(m => m.kind === 'thing').map(m => m.text);
  return { asked, ...(named.length > 0 && isQuestion ? { things: [...(context.things ?? []).filter(t => !named.includes(t)), ...named.slice(0, 2).reverse()] } : {}), lastIntent: context.lastIntent ?? read(text, {}).intent };
}

/** The kinds of gear and amounts named. */
export const kindsOf = (mentions: readonly Mention[]): string[] => [
  ...new Set(mentions.flatMap(m => (m.kind === 'word' || m.kind === 'sign' || m.kind === 'number' ? (asking.has(m.text) ? [m.text] : []) : [m.kind === 'amount' ? m.cls : m.kind]))),
];
const asking: ReadonlySet<string> = new Set(['amps', 'watts', 'hours', 'days', 'volts', 'size', 'big', 'long', 'quiz', 'many', 'metres', 'draw', 'ah', 'which', 'where', 'month', 'what', 'lesson', 'a', 'b', 'average', 'type', 'chemistry', 'day', 'amp', 'hour', 'full', 'percent']);
