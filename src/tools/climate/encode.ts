import { brotliCompressSync, constants } from 'node:zlib';
import { present } from '#basics/present.ts';
import { carried, foretold } from '../../climate/codec.ts';
import type { Head } from '../../climate/file.ts';

/** A plane as differences from what its neighbours foretell, smaller ones in fewer bytes. */
export function planeBytes(values: ArrayLike<number>, cols: number): number[] {
  const bytes: number[] = [];
  for (let i = 0; i < values.length; i++) {
    const off = present(values[i]) - foretold(values, i, cols);
    let folded = off < 0 ? -2 * off - 1 : 2 * off;
    while (folded >= 1 << carried) {
      bytes.push((folded & ((1 << carried) - 1)) | (1 << carried));
      folded >>>= carried;
    }
    bytes.push(folded);
  }
  return bytes;
}

export interface Planes {
  readonly clearness: readonly Int16Array[];
  readonly temperature: readonly Int16Array[];
  readonly height: Int16Array;
}

/** The file as `src/climate/file.ts` reads it. */
export function encode(head: Head, planes: Planes): Buffer {
  const json = Buffer.from(JSON.stringify(head));
  const length = Buffer.alloc(4);
  length.writeUInt32LE(json.length);
  const bytes = Buffer.from(
    [
      ...planes.clearness.map(plane => planeBytes(plane, head.clearness.cols)),
      ...planes.temperature.map(plane => planeBytes(plane, head.temperature.cols)),
      planeBytes(planes.height, head.height.cols),
    ].flat(),
  );
  return brotliCompressSync(Buffer.concat([length, json, bytes]), {
    params: { [constants.BROTLI_PARAM_QUALITY]: 11, [constants.BROTLI_PARAM_LGWIN]: 22 },
  });
}
