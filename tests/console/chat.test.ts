import { mkdtempSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import { inWords } from '#answer/answer.ts';
import { chat } from '#console/console.ts';
import { readHistory, writeHistory } from '#console/history.ts';
import type { Deps } from '#console/lines.ts';
import { converse as truly } from '#conversation/converse.ts';
import { VolatileStore } from '#memory/volatile/store.ts';

const converse: Deps['converse'] = (memory, message) => {
  if (message.text === 'crash') throw new Error('the disk is full');
  return {
    memory: { ...memory, settings: { mainsV: (memory.settings.mainsV ?? 0) + 1 } },
    answer: {
      ...inWords('run-time', `${message.from} said ${message.text}, turn ${memory.settings.mainsV ?? 0}`),
      next: ['what if?', 'why?'],
    },
  };
};

/** Types the lines into a chat that is no terminal. @returns what it shows */
async function type(lines: string, deps: Partial<Deps> = {}, pictureFolder?: string): Promise<string> {
  const [input, output] = [new PassThrough(), new PassThrough()];
  let shown = '';
  output.on('data', chunk => {
    shown += chunk;
  });
  input.end(lines);
  const all = { converse, store: new VolatileStore(), now: () => new Date(0), ...deps };
  await chat(all, { input, output, pictureFolder });
  return shown;
}

test('answers each line, keeps memory, and ends with the input', async () => {
  const shown = await type('fridge\n\nlights');
  expect(shown).toContain('me said fridge, turn 0');
  expect(shown).toContain('me said lights, turn 1');
  expect(shown).toContain('1  what if?');
});

test('a number asks the question beside it', async () => {
  expect(await type('fridge\n2\n')).toContain('me said why?, turn 1');
});

test('/quit ends it, whatever follows', async () => {
  expect(await type('/quit\nfridge\n')).not.toContain('fridge');
});

test('a fault is said and the talk goes on', async () => {
  const shown = await type('crash\nfridge\n');
  expect(shown).toContain('Something went wrong: the disk is full');
  expect(shown).toContain('me said fridge');
});

test('what was typed is kept for its owner alone, oldest first in the file', () => {
  const file = join(mkdtempSync(join(tmpdir(), 'history-')), 'sub', 'history');
  expect(readHistory(file)).toEqual([]);
  writeHistory(file, ['newest', 'older']);
  expect(readFileSync(file, 'utf8')).toBe('older\nnewest\n');
  expect(readHistory(file)).toEqual(['newest', 'older']);
  expect(statSync(file).mode & 0o077).toBe(0);
});

describe('a picture', () => {
  const folderOf = () => join(mkdtempSync(join(tmpdir(), 'pictures-')), 'sub');
  const runTime = 'how long will 100Ah AGM run a fridge averaging 1.5A?';

  test.each([['picture'], ['/picture'], ['4']])('%s saves it in a new file and says its name', async wish => {
    const folder = folderOf();
    const shown = await type(`${runTime}\n${wish}\n${wish}\n`, { converse: truly }, folder);
    expect(shown).toContain('4  picture');
    const names = ['charge-19700101-000000.png', 'charge-19700101-000000-2.png'];
    for (const name of names) {
      expect(shown).toContain(`Saved as ${join(folder, name)}`);
      expect(readFileSync(join(folder, name)).subarray(1, 4).toString()).toBe('PNG');
    }
    expect(readdirSync(folder).sort()).toEqual(names.toSorted());
  });
  test('of an answer that has none is a question like any other', async () => {
    expect(await type('fridge\npicture\n')).toContain('me said picture, turn 1');
  });
  test('that can’t be saved is said, and the talk goes on', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'pictures-')), 'a-file');
    writeFileSync(file, '');
    const shown = await type(`${runTime}\npicture\n60W in amps at 12V\n`, { converse: truly }, file);
    expect(shown).toMatch(/could not be saved in .*a-file \(EEXIST|ENOTDIR\)/);
    expect(shown).toContain('5 A');
  });
});
