import { chmodSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { defaultKeyFile, keySource, readKeys } from '#memory/keys.ts';
import { Vault } from '#memory/seal.ts';
import { keyA, keyB } from './examples.ts';

const folder = mkdtempSync(join(tmpdir(), 'billywatt-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe('sealing', () => {
  const vault = Vault.make(readKeys(keyA));

  test.each(['', 'fridge', 'ü – 🚐', 'x'.repeat(100_000)])('opens to what was sealed (%#)', text => {
    expect(vault.open(vault.seal(text, 'memory 1'), 'memory 1')).toBe(text);
  });

  test('the same text is sealed differently each time', () => {
    expect(vault.seal('fridge', 'a').equals(vault.seal('fridge', 'a'))).toBe(false);
  });

  test('a long text is packed', () => {
    const text = JSON.stringify(Array.from({ length: 400 }, (_, i) => ({ capacityAh: i, chemistry: 'agm' })));
    const sealed = vault.seal(text, 'memory 1');
    expect(sealed.length).toBeLessThan(text.length / 4);
    expect(vault.open(sealed, 'memory 1')).toBe(text);
  });

  test.each(['fridge', 'fridge '.repeat(1000)])(
    'every changed bit, a cut and another place are refused',
    text => {
      const sealed = vault.seal(text, 'memory 1');
      for (let bit = 0; bit < sealed.length * 8; bit += 1) {
        const altered = Buffer.from(sealed);
        altered[bit >> 3] = present(altered[bit >> 3]) ^ (1 << (bit & 7));
        expect(() => vault.open(altered, 'memory 1')).toThrow(/damaged|can't be opened/);
      }
      expect(() => vault.open(sealed.subarray(0, -1), 'memory 1')).toThrow(/damaged/);
      expect(() => vault.open(sealed.subarray(0, 20), 'memory 1')).toThrow(/damaged/);
      expect(() => vault.open(sealed, 'memory 2')).toThrow(/damaged/);
    },
  );

  test('a chat’s hash stays the same after a restart and with other keys, and differs between databases', () => {
    const [a, b] = [readKeys(keyA), readKeys(`${keyB},${keyA}`)];
    const again = Vault.open(b, Vault.open(a, vault.sealedIndex).sealedIndex);
    expect(again.hash('-5')).toEqual(vault.hash('-5'));
    expect(again.hash('-6')).not.toEqual(vault.hash('-5'));
    expect(Vault.make(a).hash('-5')).not.toEqual(vault.hash('-5'));
  });
});

describe('keys', () => {
  test('hex, base64 and base64url give the same key', () => {
    const key = Buffer.from('fb'.repeat(32), 'hex');
    for (const text of [key.toString('hex'), key.toString('base64'), key.toString('base64url')])
      expect(readKeys(text)).toEqual([key]);
  });

  test.each([
    '',
    'secret',
    'ab'.repeat(31),
    Buffer.alloc(31).toString('base64'),
    `${keyA},short`,
    `${keyA}=`,
  ])('refuses %j in one line that does not show it', text => {
    let message = '';
    try {
      readKeys(text);
    } catch (error) {
      message = (error as Error).message;
    }
    expect(message).toMatch(/^MEMORY_KEY must be 32 bytes as base64 or hex.*$/);
    if (text !== '') expect(message).not.toContain(text);
  });

  test('a first start makes a key file only its owner can read, the next one reads it', () => {
    const keyFile = join(folder, 'first', 'billywatt', 'memory.key');
    const [key] = keySource({ keyFile })(true);
    expect(key).toHaveLength(32);
    expect(statSync(keyFile).mode & 0o777).toBe(0o600);
    expect(statSync(join(keyFile, '..')).mode & 0o777).toBe(0o700);
    expect(keySource({ keyFile })(true)).toEqual([key]);
    expect(keySource({ keyFile })(false)).toEqual([key]);
  });

  test('a key file may hold several, a line each', () => {
    const keyFile = join(folder, 'several.key');
    writeFileSync(keyFile, `${keyB}\n${keyA}\n`, { mode: 0o600 });
    expect(keySource({ keyFile })(false)).toEqual([...readKeys(keyB), ...readKeys(keyA)]);
  });

  test('a key file open to others, broken, missing or impossible is refused and left alone', () => {
    const keyFile = join(folder, 'open.key');
    writeFileSync(keyFile, `${keyA}\n`, { mode: 0o600 });
    chmodSync(keyFile, 0o644);
    expect(() => keySource({ keyFile })(true)).toThrow(/chmod 600/);
    chmodSync(keyFile, 0o600);
    writeFileSync(keyFile, 'not a key');
    expect(() => keySource({ keyFile })(true)).toThrow(/key file .*open\.key must be 32 bytes/);
    expect(readFileSync(keyFile, 'utf8')).toBe('not a key');
    expect(() => keySource({ keyFile: join(folder, 'none.key') })(false)).toThrow(/is missing/);
    expect(() => keySource({ keyFile: join(keyFile, 'below', 'a.key') })(true)).toThrow(
      /MEMORY_KEY|can't be read/,
    );
  });

  test('the key file lies in the user’s settings', () => {
    expect(defaultKeyFile({ XDG_CONFIG_HOME: '/x' })).toBe(join('/x', 'billywatt', 'memory.key'));
    expect(defaultKeyFile({ HOME: '/home/sam' })).toBe(
      join('/home/sam', '.config', 'billywatt', 'memory.key'),
    );
  });
});
