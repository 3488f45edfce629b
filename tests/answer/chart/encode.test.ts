import { inflateSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pngOf } from '#answer/chart/encode.ts';
import { present } from '#basics/present.ts';

/** CRC-32 as the PNG specification's annex D writes it, bit by bit. */
function crcOf(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) {
    c ^= byte;
    for (let bit = 0; bit < 8; bit++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  }
  return (c ^ 0xffffffff) >>> 0;
}

/** The chunks of a PNG, each with its check sum held. */
function chunksOf(png: Buffer): Map<string, Buffer> {
  expect(png.subarray(0, 8).toString('hex')).toBe('89504e470d0a1a0a');
  const found = new Map<string, Buffer>();
  for (let at = 8; at < png.length; ) {
    const end = at + 8 + png.readUInt32BE(at);
    expect(png.readUInt32BE(end)).toBe(crcOf(png.subarray(at + 4, end)));
    found.set(png.toString('latin1', at + 4, at + 8), png.subarray(at + 8, end));
    at = end + 4;
  }
  return found;
}

test('a PNG holds the pixels that went in, row by row, and nothing else', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.integer({ min: 1, max: 9 }),
      fc.integer({ min: 1, max: 9 }),
      fc.uint8Array({ minLength: 324, maxLength: 324 }),
      async (width, height, bytes) => {
        const pixels = bytes.subarray(0, 4 * width * height);
        const chunks = chunksOf(await pngOf(pixels, width, height));
        expect([...chunks.keys()]).toEqual(['IHDR', 'IDAT', 'IEND']);
        const head = present(chunks.get('IHDR'));
        expect([head.readUInt32BE(0), head.readUInt32BE(4), head[8], head[9]]).toEqual([width, height, 8, 2]);
        const rows = inflateSync(present(chunks.get('IDAT')));
        const seen = Array.from({ length: height }, (_, y) => [
          ...rows.subarray(y * (3 * width + 1), (y + 1) * (3 * width + 1)),
        ]);
        const wanted = Array.from({ length: height }, (_, y) => [
          0,
          ...pixels.subarray(4 * width * y, 4 * width * (y + 1)).filter((_, i) => i % 4 !== 3),
        ]);
        expect(seen).toEqual(wanted);
      },
    ),
  );
});
