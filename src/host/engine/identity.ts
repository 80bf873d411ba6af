/**
 * Sheets and tables are known by ids that outlive renaming, reordering and saving. In the file they stand as `xr:uid`,
 * where Excel keeps its own, so that an add-in that remembers one finds the same sheet or table in either.
 */
export const isIdentity = (text: string | undefined): text is string =>
  /^\{[0-9A-F]{8}(-[0-9A-F]{4}){3}-[0-9A-F]{12}\}$/.test(text ?? "");

/** An id that nothing has had before. */
export function freshIdentity(): string {
  const digits = [...crypto.getRandomValues(new Uint8Array(16))]
    .map((byte) => byte.toString(16).padStart(2, "0"))
    .join("")
    .toUpperCase();
  return inGroups(digits);
}

/** The id of the n-th sheet or table of a workbook that gives it none, the same each time it is opened. */
export const identityByPlace = (kind: "sheets" | "tables", place: number): string =>
  inGroups(
    `${"0".repeat(8)}${kind === "sheets" ? "0001" : "000C"}0000${place.toString(16).toUpperCase().padStart(4, "0")}${"0".repeat(12)}`,
  );

const inGroups = (digits: string): string =>
  `{${digits.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5")}}`;
