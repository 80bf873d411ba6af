/**
 * A short text that differs where the cells differ, by which we know a row again as we wrote it: two 32-bit FNV-1a hashes
 * (offset basis and prime of the public definition by Fowler, Noll and Vo), the second from the other end.
 */
export function fingerprint(cells: readonly (number | string | null)[]): string {
  const letters = codePoints(JSON.stringify(cells));
  let [forwards, backwards] = [offsetBasis, offsetBasis];
  // Plans have tens of thousands of rows: plain loops.
  for (let at = 0; at < letters.length; at++) {
    forwards = Math.imul(forwards ^ letters[at]!, prime);
    backwards = Math.imul(backwards ^ letters[letters.length - 1 - at]!, prime);
  }
  return `${(forwards >>> 0).toString(36)}-${(backwards >>> 0).toString(36)}`;
}

const offsetBasis = 0x811c9dc5;
const prime = 0x01000193;

function codePoints(text: string): number[] {
  const points: number[] = [];
  for (let at = 0; at < text.length; at++) {
    const point = text.codePointAt(at)!;
    points.push(point);
    if (point > 0xffff) at++;
  }
  return points;
}
