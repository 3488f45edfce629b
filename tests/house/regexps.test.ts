import { stripTypeScriptTypes } from 'node:module';
import tokens from 'js-tokens';
import recheck from 'recheck/lib/browser.js';
import { describe, expect, test } from 'vitest';
import { programFiles, read } from './source.ts';

interface Found {
  readonly file: string;
  readonly source: string;
  readonly flags: string;
}

/** The regexps written in a file, and the places that make one at run time, which nobody can prove. */
function regexpsIn(file: string, text: string): { found: Found[]; made: string[] } {
  // Without types the code is JavaScript, whose divisions the tokenizer tells from regexps.
  const all = [...tokens(stripTypeScriptTypes(text))].filter(
    token => !/^(WhiteSpace|LineTerminator|.*Comment)/.test(token.type),
  );
  const found = all.flatMap(token => {
    if (token.type !== 'RegularExpressionLiteral') return [];
    const end = token.value.lastIndexOf('/');
    return [{ file, source: token.value.slice(1, end), flags: token.value.slice(end + 1) }];
  });
  const made = all.flatMap((token, i) =>
    token.value === 'RegExp' && (all[i - 1]?.value === 'new' || all[i + 1]?.value === '(') ? [file] : [],
  );
  return { found, made };
}

// Tools and settings read what its own people wrote, never what a chat says.
const perFile = programFiles()
  .filter(path => !path.startsWith('src/tools/') && path !== 'src/config.ts')
  .map(path => regexpsIn(path, read(path)));
const found = perFile.flatMap(file => file.found);

/** Steps are counted and no seconds, so that a busy machine says the same as one at rest. */
const untimed = { timeout: null, attackTimeout: null, seedingTimeout: null, incubationTimeout: null };

/** "safe" where the time to match grows with the length of the text and no faster. */
const verdict = ({ source, flags }: Pick<Found, 'source' | 'flags'>) =>
  recheck.checkSync(source, flags, untimed).status;

describe('every regexp of the program is harmless', () => {
  test('none is made at run time', () => {
    expect(perFile.flatMap(file => file.made)).toEqual([]);
  });

  test('there are some to check', () => {
    expect(found.length).toBeGreaterThan(0);
  });

  const named = found.map(f => [`${f.file} /${f.source}/${f.flags}`, f] as const);
  test.for(named)('%s', { timeout: 300_000 }, ([, f]) => {
    expect(verdict(f)).toBe('safe');
  });
});

describe('the check itself', () => {
  test('finds regexps among divisions, texts and comments', () => {
    const text = `const a = b! / c! / d; const t = "/x/"; // /y/\nconst e = /[/]z+/giu.test(t) ? /w/ : 1 / 2;`;
    expect(regexpsIn('made-up.ts', text).found.map(f => [f.source, f.flags])).toEqual([
      ['[/]z+', 'giu'],
      ['w', ''],
    ]);
  });

  test('finds those made at run time', () => {
    expect(
      regexpsIn('made-up.ts', `const a = new RegExp(b); const c: RegExp = RegExp(d);`).made,
    ).toHaveLength(2);
    expect(regexpsIn('made-up.ts', `const c: RegExp = /a/;`).made).toEqual([]);
  });

  test.for<[source: string, want: string]>([
    ['^(a+)+$', 'vulnerable'],
    ['\\d+\\s*ah', 'vulnerable'],
    ['[a-z]+', 'safe'],
    ['^\\d{1,6}$', 'safe'],
  ])('/%s/ is %s', ([source, want]) => {
    expect(verdict({ source, flags: '' })).toBe(want);
  });
});
