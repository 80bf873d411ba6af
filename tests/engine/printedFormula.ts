/**
 * Computes a formula as it is printed for a reader ("36 w / (37 - r)"), so that a test can hold the words to the code:
 * letters are quantities, a gap is a product, `^` a power; `exp` and `sqrt` are known.
 */
export function computePrinted(formula: string, quantities: Readonly<Record<string, number>>): number {
  const expression = formula
    .replaceAll(/(?<=[\w)]) (?=[\w(])/g, " * ")
    .replaceAll("^", "**")
    .replaceAll(/exp|sqrt/g, "Math.$&");
  return new Function(...Object.keys(quantities), `return ${expression};`)(...Object.values(quantities));
}
