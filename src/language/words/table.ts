/**
 * A table looked up by the words that people write: without a prototype, so that "constructor" is in it only where
 * somebody put it there.
 */
export const table = <T>(rows: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
  Object.assign(Object.create(null) as Record<string, T>, rows);
