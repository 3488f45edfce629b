/**
 * Stands at the end of a switch over all kinds of something: it compiles only where none is left.
 * @throws Error naming the kind, where data from outside the types got here
 */
export function unhandled(left: never, what = 'kind'): never {
  throw new Error(`unhandled ${what}: ${JSON.stringify(left)}`);
}
