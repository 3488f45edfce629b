/**
 * A plane of small whole numbers, row by row, each kept as its difference from what its neighbours foretell:
 * the median of left, above and left + above − corner, as in JPEG-LS (ISO/IEC 14495-1).
 */
export function foretold(values: ArrayLike<number>, i: number, cols: number): number {
  if (i === 0) return 0;
  const above = i >= cols ? (values[i - cols] as number) : undefined;
  if (i % cols === 0) return above as number;
  const left = values[i - 1] as number;
  if (above === undefined) return left;
  const slope = left + above - (values[i - cols - 1] as number);
  return Math.max(Math.min(left, above), Math.min(Math.max(left, above), slope));
}

/** Bits of a byte that carry the number; the eighth says that another byte follows. */
export const carried = 7;
const most = 1 << carried;

/** Reads a plane that starts at byte `from`. */
export function readPlane(
  bytes: Uint8Array,
  from: number,
  size: { readonly rows: number; readonly cols: number },
): { readonly values: Int16Array; readonly end: number } {
  const values = new Int16Array(size.rows * size.cols);
  let at = from;
  for (let i = 0; i < values.length; i++) {
    let folded = 0;
    for (let shift = 0; ; shift += carried) {
      const byte = bytes[at++] as number;
      folded |= (byte & (most - 1)) << shift;
      if (byte < most) break;
    }
    // Signs are folded in: 0, −1, 1, −2, 2 …
    values[i] = foretold(values, i, size.cols) + ((folded >>> 1) ^ -(folded & 1));
  }
  return { values, end: at };
}
