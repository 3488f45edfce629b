import { memoryVersion } from '#conversation/memory.ts';

/** A stored document of some version, before it is checked. */
type Stored = Readonly<Record<string, unknown>>;

/** Reads a document of one version as the next one. Pure; sets `version` itself. */
export type Step = (document: Stored) => Stored;

/**
 * One step for each old version: `upgrades[1]` reads version 1 as version 2. Steps stay for ever, since a
 * chat may sleep for years. A stored example of each version is in `tests/memory/examples/`.
 */
export const upgrades: Readonly<Record<number, Step>> = { 1: framed };

/** Version 2 keeps a few questions in place of the last one, what the next line is read in, and no language. */
function framed({ last, aside: _aside, settings, ...rest }: Stored): Stored {
  const { language: _language, ...kept } = (settings ?? {}) as Stored;
  const { language: _spoken, ...frame } = (last ?? {}) as Stored;
  const { intent, facts, from, at, asked } = frame;
  const talk = {
    lastIntent: intent,
    lastKeys: Object.keys(facts ?? {}),
    asked: asked ? ['?'] : [],
    lastFrom: from,
    at,
  };
  return { ...rest, version: 2, settings: kept, frames: last ? [frame] : [], ...(last ? { talk } : {}) };
}

/**
 * Reads a stored document forwards to the newest version.
 * @throws Error on a document from a newer program, or one without a version
 */
export const upgrade = (document: unknown, steps = upgrades, newest: number = memoryVersion): unknown => {
  let now = document as Stored;
  for (;;) {
    const version = now?.version;
    if (version === newest) return now;
    if (typeof version !== 'number') throw new Error('a stored memory has no version');
    if (version > newest)
      throw new Error(
        `a stored memory has version ${version}, this program reads up to ${newest}: update it`,
      );
    const step = steps[version];
    if (!step) throw new Error(`no step reads a stored memory of version ${version}`);
    now = step(now);
  }
};
