import { promisify } from 'node:util';
import { crc32, deflate } from 'node:zlib';
import { present } from '#basics/present.ts';

const squeeze = promisify(deflate);
const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** 8 bits of red, green and blue for a pixel; the one way of packing and filtering; not interlaced. */
const format = [8, 2, 0, 0, 0] as const;

/** A chunk of a PNG: its length, name, data and check sum. W3C PNG, third edition, 5.3. */
function chunk(name: string, data: Uint8Array): Buffer {
  const bytes = Buffer.concat([Buffer.alloc(4), Buffer.from(name, 'latin1'), data, Buffer.alloc(4)]);
  bytes.writeUInt32BE(data.length, 0);
  bytes.writeUInt32BE(crc32(bytes.subarray(4, -4)), bytes.length - 4);
  return bytes;
}

/**
 * Opaque pixels (red, green, blue, alpha) as a PNG. resvg's own packing holds up everything else meanwhile, and comes
 * out a third larger: of a whole picture's 21 ms of the thread that answers this leaves 15.
 */
export async function pngOf(pixels: Uint8Array, width: number, height: number): Promise<Buffer> {
  // Each row begins with its filter: none, 0.
  const rows = Buffer.alloc((3 * width + 1) * height);
  let [to, from] = [0, 0];
  for (let y = 0; y < height; y++) {
    to++;
    for (let x = 0; x < width; x++) {
      rows[to++] = present(pixels[from]);
      rows[to++] = present(pixels[from + 1]);
      rows[to++] = present(pixels[from + 2]);
      from += 4;
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set(format, 8);
  const data = await squeeze(rows, { level: 4 });
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', data), chunk('IEND', Buffer.alloc(0))]);
}
