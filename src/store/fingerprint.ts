/**
 * A short text that differs where the cells differ, by which we know a row again as we wrote it: two 32-bit FNV-1a hashes
 * (offset basis and prime of the public definition by Fowler, Noll and Vo), the second from the other end.
 */
export function fingerprint(cells: readonly (number | string | null)[]): string {
  const text = JSON.stringify(cells);
  const hash = (units: Iterable<number>): string => {
    let value = 0x811c9dc5;
    for (const unit of units) value = Math.imul(value ^ unit, 0x01000193) >>> 0;
    return value.toString(36);
  };
  const units = Array.from(text, (letter) => letter.codePointAt(0)!);
  return `${hash(units)}-${hash(units.reverse())}`;
}
