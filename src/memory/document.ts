import type { ZodError } from 'zod';
import { Damaged, isMemory, type Memory, memorySchema, memoryVersion } from '#conversation/memory.ts';
import { upgrade } from './upgrade.ts';

/** A document larger than this (in UTF-16 units) is refused; a busy club's is some 20,000. */
const maxLength = 1_000_000;

/** Only the top-level part and the kind of the first problem: deeper paths hold names. */
const problem = (error: ZodError): string => {
  const first = error.issues[0];
  return `${String(first?.path[0] ?? 'the whole')} is wrong (${first?.code})`;
};

/** The memory as text to store. @throws Error when it isn't a valid memory, so that nothing unreadable is kept */
export const writeMemory = (memory: Memory): string => {
  if (!isMemory(memory)) {
    const { error } = memorySchema.safeParse(memory);
    if (error) throw new Error(`a memory was not saved: ${problem(error)}`);
  }
  const text = JSON.stringify(memory);
  if (text.length > maxLength)
    throw new Error(`a memory was not saved: ${text.length} characters are too many`);
  return text;
};

const parse = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    throw new Damaged('a stored memory is damaged');
  }
};

const check = (document: unknown): Memory => {
  const checked = memorySchema.safeParse(upgrade(document));
  if (!checked.success) throw new Damaged(`a stored memory can't be read: ${problem(checked.error)}`);
  return checked.data;
};

/** The memory that a text from anywhere holds, read forwards from older versions. @throws Error when it isn't one */
export const readMemory = (text: string): Memory => check(parse(text));

/**
 * The memory that a text of our own holds. What this version wrote was checked then, and its seal proves that it is
 * the same still.
 */
export const readOwn = (text: string): Memory => {
  const document = parse(text) as Memory | null;
  return document?.version === memoryVersion ? document : check(document);
};
