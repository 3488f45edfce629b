/**
 * Whether all that a part tells stands in the whole, which may tell more: of plain data, rows in any order, each key with
 * its value.
 */
export function isPartOf(part: unknown, whole: unknown): boolean {
  if (typeof part !== 'object' || part === null) return part === whole;
  if (typeof whole !== 'object' || whole === null) return false;
  if (Array.isArray(part))
    return Array.isArray(whole) && part.every(one => whole.some(other => isPartOf(one, other)));
  return Object.entries(part).every(([key, value]) =>
    isPartOf(value, (whole as Record<string, unknown>)[key]),
  );
}
