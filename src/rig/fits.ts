import type { z } from 'zod';

/** Whether a value is of a schema's shape. */
export type Fits = (value: unknown) => boolean;

/** A part of a schema as zod tells it to libraries that go by it (`_zod.def`), so far as ours use it. */
type Part =
  | { readonly type: 'boolean' }
  | { readonly type: 'literal'; readonly values: readonly unknown[] }
  | { readonly type: 'enum'; readonly entries: Readonly<Record<string, unknown>> }
  | { readonly type: 'optional' | 'nullable'; readonly innerType: z.ZodType }
  | { readonly type: 'union'; readonly options: readonly z.ZodType[] }
  | { readonly type: 'number' | 'string'; readonly checks?: Checks }
  | { readonly type: 'array'; readonly element: z.ZodType; readonly checks?: Checks }
  | { readonly type: 'tuple'; readonly items: readonly z.ZodType[]; readonly rest?: z.ZodType | null }
  | { readonly type: 'record'; readonly keyType: z.ZodType; readonly valueType: z.ZodType }
  | { readonly type: 'object'; readonly shape: Shape; readonly catchall?: z.ZodType };
type Shape = Readonly<Record<string, z.ZodType>>;
type Checks = readonly { readonly _zod: { readonly def: Check } }[];
interface Check {
  readonly check: string;
  readonly value?: number;
  readonly inclusive?: boolean;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly length?: number;
  readonly format?: string;
}

type Row = Readonly<Record<string, unknown>>;
const partOf = (schema: z.ZodType): Part => schema._zod.def as unknown as Part;
const isNever = ({ type }: { readonly type: string }): boolean => type === 'never';
const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const made = new WeakMap<z.ZodType, Fits>();

/**
 * A plain function that tells whether a value fits a schema, made once of the schema's own parts: of the facts of a
 * message it takes a hundredth of what `safeParse` takes, which looks at every key that is not there. What is not
 * known of a schema here, zod is asked.
 */
export function fits(schema: z.ZodType): Fits {
  let fit = made.get(schema);
  if (fit === undefined) {
    fit = ofPart(partOf(schema)) ?? (value => schema.safeParse(value).success);
    made.set(schema, fit);
  }
  return fit;
}

function ofPart(part: Part): Fits | undefined {
  switch (part.type) {
    case 'boolean':
      return value => typeof value === 'boolean';
    case 'literal':
      return value => part.values.includes(value);
    case 'enum': {
      const known = new Set<unknown>(Object.values(part.entries));
      return value => known.has(value);
    }
    case 'optional': {
      const inner = fits(part.innerType);
      return value => value === undefined || inner(value);
    }
    case 'nullable': {
      const inner = fits(part.innerType);
      return value => value === null || inner(value);
    }
    case 'union': {
      const each = part.options.map(fits);
      return value => each.some(one => one(value));
    }
    case 'number':
      return withChecks(part.checks, value => Number.isFinite(value), ofNumber);
    case 'string':
      return withChecks(part.checks, value => typeof value === 'string', ofLength);
    case 'array': {
      const element = fits(part.element);
      return withChecks(part.checks, value => Array.isArray(value) && value.every(element), ofLength);
    }
    case 'tuple':
      return part.rest ? undefined : ofTuple(part.items.map(fits));
    case 'record':
      return ofRecord(fits(part.keyType), fits(part.valueType));
    case 'object':
      return part.catchall && isNever(partOf(part.catchall)) ? ofObject(part.shape) : undefined;
  }
  return undefined;
}

const ofTuple =
  (items: readonly Fits[]): Fits =>
  value =>
    Array.isArray(value) && value.length === items.length && items.every((item, i) => item(value[i]));

const ofRecord =
  (key: Fits, one: Fits): Fits =>
  value =>
    isRow(value) && Object.keys(value).every(name => key(name) && one(value[name]));

function ofObject(shape: Shape): Fits {
  const known = new Map(Object.entries(shape).map(([name, schema]) => [name, fits(schema)]));
  const needed = Object.entries(shape).flatMap(([name, schema]) =>
    partOf(schema).type === 'optional' ? [] : [name],
  );
  return value => {
    if (!isRow(value)) return false;
    for (const name in value) if (!known.get(name)?.(value[name])) return false;
    return needed.every(name => name in value);
  };
}

/** A test with the limits that a part names; undefined where one of them is not known here. */
function withChecks(
  checks: Checks | undefined,
  isKind: Fits,
  limitOf: (check: Check) => ((value: never) => boolean) | undefined,
): Fits | undefined {
  const limits: ((value: never) => boolean)[] = [];
  for (const { _zod } of checks ?? []) {
    const limit = limitOf(_zod.def);
    if (limit === undefined) return undefined;
    limits.push(limit);
  }
  return value => isKind(value) && limits.every(limit => limit(value as never));
}

function ofNumber({ check, value = 0, inclusive, format }: Check): ((x: number) => boolean) | undefined {
  if (check === 'greater_than') return inclusive ? x => x >= value : x => x > value;
  if (check === 'less_than') return inclusive ? x => x <= value : x => x < value;
  return check === 'number_format' && format === 'safeint' ? Number.isSafeInteger : undefined;
}

function ofLength({ check, minimum = 0, maximum = 0, length = 0 }: Check) {
  if (check === 'max_length') return (x: { length: number }) => x.length <= maximum;
  if (check === 'min_length') return (x: { length: number }) => x.length >= minimum;
  return check === 'length_equals' ? (x: { length: number }) => x.length === length : undefined;
}
