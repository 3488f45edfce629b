/**
 * A value that must be there by now: what a check upstream promised, or an element at a place inside its list.
 * @throws Error naming what is missing; that is a mistake in the program, never in what a person wrote
 */
export function present<T>(value: T | undefined | null, what = 'a value that must be there'): T {
  if (value === undefined || value === null) throw new Error(`missing: ${what}`);
  return value;
}
