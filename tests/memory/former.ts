import { readFileSync } from 'node:fs';

type Stored = Readonly<Record<string, { readonly hex: string } | string | number | null>>;
const tables = ['meta', 'memories', 'moves', 'claims'] as const;

/**
 * The rows of a database as the first version kept them, sealed with key A: "-5" with an invented chat moved to
 * -1001234567890, "7" with a rig of alex, and a reply that was due for update 1.
 */
export function formerRows(): {
  table: string;
  columns: string[];
  values: (Buffer | string | number | null)[];
}[] {
  const text = readFileSync(new URL('./examples/sealed-1.json', import.meta.url), 'utf8');
  const stored = JSON.parse(text) as Record<(typeof tables)[number], Stored[]>;
  return tables.flatMap(table =>
    stored[table].map(row => ({
      table,
      columns: Object.keys(row),
      values: Object.values(row).map(value =>
        typeof value === 'object' && value !== null ? Buffer.from(value.hex, 'hex') : value,
      ),
    })),
  );
}
