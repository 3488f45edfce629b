import type { Stated } from './decide/assemble.ts';
import type { TalkContext } from './decide/frame.ts';
import type { Mention } from './recognise/mention.ts';
import { recognise } from './recognise/recognise.ts';

/** What the lines before leave for the reading of the next, and whose the last of them was. Training and the running bot build it alike. */
export interface Talk extends TalkContext {
  readonly lastFrom?: string;
}

/** Reads one line of a talk: the question and its facts. */
export type LineReader = (
  text: string,
  context: TalkContext,
) => { readonly intent: string; readonly stated: Stated };

/** Lines that leave the question before where it is. */
const idle: ReadonlySet<string> = new Set(['none', 'help', 'privacy', 'forget']);

/** What a person's line leaves. */
export function afterLine(talk: Talk, intent: string, stated: Stated, from: string): Talk {
  const keys = Object.keys(stated);
  if (idle.has(intent)) return talk;
  const hasRig = talk.hasRig || intent === 'rig';
  if (intent === 'unclear' && keys.length === 0) return talk;
  const loads = (stated.loads ?? []).flatMap(load => (typeof load.name === 'string' ? [load.name] : []));
  const things = loads.length > 0 ? loads : talk.things;
  return { lastIntent: intent, lastKeys: keys, hasRig, asked: [], ...(things && { things }), lastFrom: from };
}

/** What the bot's own line leaves: what it asked for, as the kinds it names. */
export function heardFromBot(text: string, talk: Talk, read: LineReader): Partial<TalkContext> {
  const { mentions } = recognise(text);
  const isQuestion = text.includes('?');
  const asked = isQuestion ? ['?', ...kindsOf(mentions)] : [];
  const named = isQuestion ? mentions.filter(m => m.kind === 'thing').map(m => m.text) : [];
  const things =
    named.length > 0
      ? [...(talk.things ?? []).filter(name => !named.includes(name)), ...named.slice(0, 2).reverse()]
      : talk.things;
  return { asked, ...(things && { things }), lastIntent: talk.lastIntent ?? read(text, {}).intent };
}

/** The talk as somebody's next line is read in it. */
export function contextFor({ lastFrom, ...rest }: Talk, from: string): TalkContext {
  return { ...rest, isOwn: lastFrom === from };
}

/** The kinds of gear and amounts named. */
export const kindsOf = (mentions: readonly Mention[]): string[] => [
  ...new Set(
    mentions.flatMap(m => {
      const isPlain = m.kind === 'word' || m.kind === 'sign' || m.kind === 'number';
      if (isPlain) return asking.has(m.text) ? [m.text] : [];
      return [m.kind === 'amount' ? m.cls : m.kind];
    }),
  ),
];

/** Plain words by which the bot asks for something. */
const asking: ReadonlySet<string> = new Set(
  'amps watts hours days volts size big long quiz many metres draw ah which where month what lesson a b average type chemistry day amp hour full percent'.split(
    ' ',
  ),
);
