/** A copy of an object without some of its keys; the object itself where it has none of them. */
export function without<T extends object>(value: T, ...keys: readonly (keyof T)[]): T {
  if (!keys.some(key => key in value)) return value;
  const rest = { ...value };
  for (const key of keys) delete rest[key];
  return rest;
}
