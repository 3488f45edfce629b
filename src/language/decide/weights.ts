import { readFileSync } from 'node:fs';
import { IntMap } from './int-map.ts';
import type { Model, Net } from './model.ts';
import { Table } from './table.ts';

/**
 * The file of weights, written by `npm run train`: one line of JSON that tells what is in it, then numbers in the order
 * told: the sorted numbers of the features, then their rows as bytes, each table with its own scale.
 */
interface Header {
  readonly fingerprint: string;
  readonly intents: readonly string[];
  readonly hazards: readonly string[];
  readonly certainty: readonly number[];
  readonly logs?: readonly [number, number];
  readonly tables: readonly {
    readonly name: string;
    readonly rows: number;
    readonly size: number;
    readonly scale: number;
  }[];
  readonly dense: Readonly<Record<string, readonly number[]>>;
  /** How many members each net has. */
  readonly members: Readonly<Record<string, number>>;
}

const newLine = 10;
const nets = ['slots', 'supply', 'plans', 'message'] as const;
/** Those that a model has, with the one that is fitted last. */
const netsOf = ({ dangers }: Pick<Model, 'dangers'>) => (dangers ? ([...nets, 'dangers'] as const) : nets);

/** A model as bytes. */
export function writeModel(model: Model, fingerprint: string): Buffer {
  const parts: Buffer[] = [];
  const tables: Header['tables'][number][] = [];
  const put = (name: string, table: Table): void => {
    // In unsigned order, as the file keeps them.
    const features = [...table.index.entries()].sort((a, b) => (a[0] >>> 0) - (b[0] >>> 0));
    const { size, scale } = table;
    const rows = new Int8Array(features.length * size);
    features.forEach(([, row], i) => {
      rows.set(table.rows.subarray(row * size, (row + 1) * size), i * size);
    });
    parts.push(Buffer.from(Uint32Array.from(features, ([f]) => f).buffer), Buffer.from(rows.buffer));
    tables.push({ name, rows: features.length, size, scale });
  };
  put('slots', model.slots.features);
  put('owners', model.owners);
  put('supply', model.supply.features);
  put('plans', model.plans.features);
  put('message', model.message.features);
  if (model.ranker) put('ranker', model.ranker.features);
  if (model.doubts) put('doubts', model.doubts);
  if (model.dangers) put('dangers', model.dangers.features);
  const round = (values: Float32Array | Float64Array): number[] =>
    Array.from(values, v => Math.round(v * 1e4) / 1e4);
  const dense: Record<string, number[]> = {};
  const all = netsOf(model).map(name => [name, model[name]!] as const);
  for (const [name, { bias, out, outBias }] of all) {
    dense[`${name}.bias`] = round(bias);
    dense[`${name}.out`] = round(out);
    dense[`${name}.outBias`] = round(outBias);
  }
  const header: Header = {
    fingerprint,
    intents: model.intentNames,
    hazards: model.hazardNames,
    certainty: model.certainty,
    logs: model.ranker?.logs,
    tables,
    dense,
    members: Object.fromEntries(all.map(([name, { members }]) => [name, members])),
  };
  return Buffer.concat([Buffer.from(`${JSON.stringify(header)}\n`), ...parts]);
}

/** A model from its bytes. */
export function readModel(bytes: Buffer): Model {
  const end = bytes.indexOf(newLine);
  const header = JSON.parse(bytes.subarray(0, end).toString('utf8')) as Header;
  let at = end + 1;
  const tables: Record<string, Table> = {};
  for (const { name, rows, size, scale } of header.tables) {
    const start = bytes.byteOffset + at;
    // Copied to where four bytes stand together.
    const index = IntMap.numbering(
      new Int32Array(bytes.buffer.slice(start, start + rows * 4) as ArrayBuffer),
    );
    at += rows * 4;
    // A view of the file: nothing is copied.
    tables[name] = new Table(
      index,
      new Int8Array(bytes.buffer, bytes.byteOffset + at, rows * size),
      size,
      scale,
    );
    at += rows * size;
  }
  const net = (name: (typeof nets)[number] | 'dangers'): Net => ({
    features: tables[name]!,
    bias: Float64Array.from(header.dense[`${name}.bias`]!),
    out: Float64Array.from(header.dense[`${name}.out`]!),
    outBias: Float64Array.from(header.dense[`${name}.outBias`]!),
    members: header.members[name]!,
  });
  return {
    slots: net('slots'),
    owners: tables.owners!,
    supply: net('supply'),
    plans: net('plans'),
    message: net('message'),
    ...(tables.dangers && { dangers: net('dangers') }),
    hazardNames: header.hazards,
    certainty: header.certainty,
    ...(header.logs && {
      ranker: { features: tables.ranker!, logs: header.logs },
    }),
    ...(tables.doubts && { doubts: tables.doubts }),
    intentNames: header.intents,
  };
}

let loaded: Model | undefined;
/** The model that the project ships, read at the first use. */
export const shippedModel = (): Model =>
  (loaded ??= readModel(readFileSync(new URL('./weights.bin', import.meta.url))));
