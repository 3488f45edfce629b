import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { memoryVersion } from '#conversation/memory.ts';
import { readMemory, writeMemory } from '#memory/document.ts';
import { type Step, upgrade, upgrades } from '#memory/upgrade.ts';
import { billabong } from './examples.ts';

const versions = Array.from({ length: memoryVersion }, (_, i) => i + 1);

describe('stored memories', () => {
  test.each(versions)('the example of version %i reads as a memory of today', version => {
    const text = readFileSync(new URL(`./examples/v${version}.json`, import.meta.url), 'utf8');
    const memory = readMemory(text);
    expect(JSON.parse(text).version).toBe(version);
    expect(memory.version).toBe(memoryVersion);
    expect(Object.keys(memory.rigs)).toEqual(Object.keys(JSON.parse(text).rigs));
    expect(readMemory(writeMemory(memory))).toEqual(memory);
  });

  test('each old version has its step, and only those', () => {
    expect(Object.keys(upgrades).map(Number)).toEqual(versions.slice(0, -1));
  });

  test('steps are taken in order, from where the document stands, without changing it', () => {
    const steps: Record<number, Step> = {
      1: ({ rig, ...rest }) => ({ ...rest, version: 2, rigs: { '': rig } }),
      2: document => ({ ...document, version: 3, claims: [] }),
    };
    const old = Object.freeze({ version: 1, rig: { dailyUseAh: 30 } });
    expect(upgrade(old, steps, 3)).toEqual({ version: 3, rigs: { '': { dailyUseAh: 30 } }, claims: [] });
    expect(upgrade({ version: 2, rigs: {} }, steps, 3)).toEqual({ version: 3, rigs: {}, claims: [] });
  });

  test.each([
    ['no JSON', '{"version":1,', /damaged/],
    ['no version', '{}', /no version/],
    ['nothing', 'null', /no version/],
    [
      'from a newer program',
      `{"version":${memoryVersion + 1}}`,
      /version 3, this program reads up to 2: update it/,
    ],
    ['of a version nobody reads', '{"version":0}', /no step reads/],
    ['of wrong shape', JSON.stringify({ ...billabong, claims: 'none' }), /claims is wrong/],
    ['with parts unknown', JSON.stringify({ ...billabong, extra: 1 }), /the whole is wrong/],
  ])('%s: an error, no memory', (_, text, message) => {
    expect(() => readMemory(text)).toThrow(message);
  });

  test('a document beyond all measure is refused', () => {
    const rigs = Object.fromEntries(
      Array.from({ length: 20_000 }, (_, i) => [`person ${i}`, { place: 'x'.repeat(60) }]),
    );
    expect(() => writeMemory({ ...billabong, rigs })).toThrow(/characters are too many/);
  });
});
