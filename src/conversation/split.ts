import { read } from '#language/read.ts';
import type { Context, Cue, Said } from '#language/said.ts';
import { isAsking } from './follow-up.ts';

const isAskCue = (cue: Cue): boolean => cue.startsWith('ask-');

/** "What cable and fuse" is two questions with one set of facts. */
function cableAndFuse(said: Said): readonly Said[] | undefined {
  const { cues, facts } = said;
  const isBoth = cues.has('cable') && cues.has('fuse') && cues.has('ask-what-size');
  if (!isBoth || facts.cable?.lengthM === undefined || said.claims.length > 0) return undefined;
  const lacking = (gone: Cue): Said => ({ ...said, cues: new Set([...cues].filter(cue => cue !== gone)) });
  return [lacking('fuse'), lacking('cable')];
}

/**
 * The questions of one message. Facts hold for all of them; what is asked, each has for itself:
 * "100Ah, fridge 1.2A: how long? And what panel?" is two. Most messages are one.
 */
export function questionsOf(text: string, said: Said, context: Context): readonly Said[] {
  const both = cableAndFuse(said);
  if (both) return both;
  const parts = text.split('?').filter(part => part.trim() !== '');
  if (parts.length < 2 || parts.length > 6) return [said];
  const asking = parts.map(part => read(part, context)).filter(isAsking);
  if (asking.length < 2) return [said];
  const common = [...said.cues].filter(cue => !isAskCue(cue));
  return asking.map(part => ({ ...said, cues: new Set([...common, ...part.cues]) }));
}
