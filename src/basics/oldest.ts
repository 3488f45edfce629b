/** Drops what was put in first: maps and sets that must stay small keep their order of putting in. */
export function dropOldest<K>(kept: { keys(): Iterator<K>; delete(key: K): unknown }): void {
  const { done, value } = kept.keys().next();
  if (!done) kept.delete(value);
}
