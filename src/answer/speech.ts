import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { FluentBundle, FluentResource } from '@fluent/bundle';
import { decimals, plain, significant } from '#quantity/round.ts';

/** What goes into the gaps of a message: numbers written out already; a bare number only to choose a plural by. */
export type Gaps = Readonly<Record<string, string | number>>;

/**
 * How answers speak one language. English stands in the code, where a message is used; the other languages are
 * data in Fluent files (projectfluent.org): `answer/words/<language>/*.ftl` for what all answers share, and
 * `words/<language>.ftl` in the folder of a question. A language is there when its files are.
 */
export interface Speech {
  /** "en", "de". */
  readonly language: string;
  /** The message of a key in this language, else the English one given, with its {gaps} filled. */
  readonly say: (key: string, text: string, gaps?: Gaps) => string;
  /** The message of a key, undefined where this language has none; always so in English. */
  readonly find: (key: string, gaps?: Gaps) => string | undefined;
  readonly decimals: (value: number, digits: number) => string;
  readonly significant: (value: number, digits?: number) => string;
  readonly plain: (value: number) => string;
}

/** Fills "{gaps}". What fills a gap may itself hold braces: it is not looked at again. */
const fill = (text: string, gaps: Gaps | undefined): string =>
  gaps ? text.replace(/\{(\w+)\}/g, (gap, name: string) => `${gaps[name] ?? gap}`) : text;

/** English: what the code says. */
export const english: Speech = {
  language: 'en',
  say: (_key, text, gaps) => fill(text, gaps),
  find: () => undefined,
  decimals,
  significant: (value, digits) => significant(value, digits),
  plain: value => plain(value),
};

const load = createRequire(import.meta.url);
const shared = new URL('words/', import.meta.url);
const resources = new Map<string, FluentResource | undefined>();

/** A file of messages, read and parsed once; undefined where there is none. */
function resource(file: URL): FluentResource | undefined {
  if (resources.has(file.href)) return resources.get(file.href);
  let found: FluentResource | undefined;
  try {
    const text = readFileSync(file, 'utf8');
    found = new (load('@fluent/bundle') as typeof import('@fluent/bundle')).FluentResource(text);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error;
  }
  resources.set(file.href, found);
  return found;
}

const isCode = (language: string): boolean => /^[a-z]{2}$/.test(language);

/** What all answers share in a language; empty where it has no folder. */
function sharedOf(language: string): URL[] {
  const folder = new URL(`${language}/`, shared);
  try {
    return readdirSync(folder)
      .filter(name => name.endsWith('.ftl'))
      .sort()
      .map(name => new URL(name, folder));
  } catch {
    return [];
  }
}

/** The languages there are, by the folders of `words/`, English first. */
export const languages = (): readonly string[] => {
  heldLanguages ??= ['en', ...readdirSync(shared).filter(isCode).sort()];
  return heldLanguages;
};
let heldLanguages: readonly string[] | undefined;

function speechOf(language: string, own?: FluentResource): Speech {
  const { FluentBundle } = load('@fluent/bundle') as typeof import('@fluent/bundle');
  // No marks of direction: all languages here run one way, and the text goes into plain chats.
  const bundle: FluentBundle = new FluentBundle(language, { useIsolating: false });
  for (const file of sharedOf(language)) bundle.addResource(resource(file)!);
  if (own) bundle.addResource(own, { allowOverrides: true });
  const find = (key: string, gaps?: Gaps): string | undefined => {
    const pattern = bundle.getMessage(key)?.value;
    return pattern ? bundle.formatPattern(pattern, gaps ?? null, []) : undefined;
  };
  const locale = find('locale') ?? language;
  return {
    language,
    find,
    say: (key, text, gaps) => find(key, gaps) ?? fill(text, gaps),
    decimals: (value, digits) => decimals(value, digits, locale),
    significant: (value, digits) => significant(value, digits, locale),
    plain: value => plain(value, locale),
  };
}

const sharedSpeech = new Map<string, Speech>();

/** What all answers share in a language; English where the language isn't there. */
export function speech(language = 'en'): Speech {
  if (language === 'en' || !languages().includes(language)) return english;
  const found = sharedSpeech.get(language) ?? speechOf(language);
  sharedSpeech.set(language, found);
  return found;
}

/**
 * The speech of a question: what all share and the `words/<language>.ftl` beside the file of this address.
 * English where the question has no such file, so that an answer never mixes languages. Read at first use, held.
 */
export function wordsBeside(address: string): (language?: string) => Speech {
  const held = new Map<string, Speech>();
  return (language = 'en') => {
    if (language === 'en' || !languages().includes(language)) return english;
    const found = held.get(language);
    if (found) return found;
    const own = resource(new URL(`words/${language}.ftl`, address));
    const made = own ? speechOf(language, own) : english;
    held.set(language, made);
    return made;
  };
}
