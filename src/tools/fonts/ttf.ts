/** What layout has to know of a font: which characters it has, and how far each moves on, in thousandths of its size. */
export type Advances = ReadonlyMap<number, number>;

const tableOf = (font: DataView, tag: string): number => {
  for (let i = 0; i < font.getUint16(4); i++) {
    const at = 12 + 16 * i;
    const name = String.fromCharCode(...[0, 1, 2, 3].map(n => font.getUint8(at + n)));
    if (name === tag) return font.getUint32(at + 8);
  }
  throw new Error(`the font has no table ${tag}`);
};

/** The character map of formats 4 and 12 (OpenType 1.9, "cmap"), as pairs of character and glyph. */
function* charactersOf(font: DataView): Generator<readonly [code: number, glyph: number]> {
  const cmap = tableOf(font, 'cmap');
  const subtables = Array.from({ length: font.getUint16(cmap + 2) }, (_, i) =>
    font.getUint32(cmap + 8 + 8 * i),
  );
  for (const at of subtables.map(offset => cmap + offset)) {
    const format = font.getUint16(at);
    if (format === 12)
      for (let i = 0; i < font.getUint32(at + 12); i++) {
        const [from, to, glyph] = [0, 4, 8].map(n => font.getUint32(at + 16 + 12 * i + n)) as [
          number,
          number,
          number,
        ];
        for (let code = from; code <= to; code++) yield [code, glyph + code - from];
      }
    if (format === 4) yield* segmentsOf(font, at);
  }
}

function* segmentsOf(font: DataView, at: number): Generator<readonly [code: number, glyph: number]> {
  const size = font.getUint16(at + 6);
  for (let i = 0; i < size; i += 2) {
    const [to, from] = [font.getUint16(at + 14 + i), font.getUint16(at + 16 + size + i)];
    const delta = font.getInt16(at + 16 + 2 * size + i);
    const offsetAt = at + 16 + 3 * size + i;
    const offset = font.getUint16(offsetAt);
    for (let code = from; code <= to && code !== 0xffff; code++) {
      const raw = offset === 0 ? code : font.getUint16(offsetAt + offset + 2 * (code - from));
      const glyph = raw === 0 && offset !== 0 ? 0 : (raw + delta) & 0xffff;
      if (glyph !== 0) yield [code, glyph];
    }
  }
}

/**
 * Reads a TrueType font.
 * @throws Error where a table is missing
 */
export function advancesOf(bytes: Uint8Array): Advances {
  const font = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const unitsPerEm = font.getUint16(tableOf(font, 'head') + 18);
  const metrics = font.getUint16(tableOf(font, 'hhea') + 34);
  const hmtx = tableOf(font, 'hmtx');
  return new Map(
    [...charactersOf(font)].map(([code, glyph]) => [
      code,
      Math.round((1000 * font.getUint16(hmtx + 4 * Math.min(glyph, metrics - 1))) / unitsPerEm),
    ]),
  );
}
