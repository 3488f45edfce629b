import { readFileSync } from 'node:fs';

/** Words with their vectors, the commonest first, as the file has them. */
export type Vectors = ReadonlyMap<string, readonly number[]>;

/** Reads vectors: JSON with a key "vectors", or one word a line with its numbers behind it (GloVe's own text format). */
export function readVectors(path: string, size: number): Vectors {
  const text = readFileSync(path, 'utf8');
  if (text.startsWith('{')) {
    const { vectors } = JSON.parse(text) as { vectors?: Readonly<Record<string, readonly number[]>> };
    if (!vectors) throw new Error(`${path} has no "vectors"`);
    return new Map(Object.entries(vectors).map(([word, row]) => [word, row.slice(0, size)]));
  }
  const lines = text.split('\n').filter(line => line !== '');
  return new Map(
    lines.map(line => {
      const [word = '', ...row] = line.split(' ');
      if (row.length !== size) throw new Error(`${path}: “${word}” has ${row.length} numbers, not ${size}`);
      return [word, row.map(Number)];
    }),
  );
}
