/**
 * What another program puts on the clipboard, as the table it was. Cells are separated by tabs; a cell with a tab, a
 * line break or a quote in it stands in quotes, with its own quotes doubled, as spreadsheet programs write it.
 *
 * Each cell is then read as it would be typed into this page, whose language is American English: "150.5" is a number,
 * "150,5" stays text, as in Excel set to that language (reading results takes it for the number it is). Spreadsheet
 * programs put more than text on the clipboard: see `withExactNumbers`.
 */
export function cellsOfText(text: string): string[][] {
  const rows: string[][] = [[]];
  const cell = /(?:"((?:[^"]|"")*)"(?=\t|\r?\n|$)|([^\t\r\n]*))(\t|\r?\n|$)/y;
  while (cell.lastIndex < text.length) {
    const [, quoted, plain = "", end = ""] = cell.exec(text) ?? [];
    if (end === "" && quoted === undefined && plain === "" && cell.lastIndex === 0) break;
    rows.at(-1)!.push(quoted === undefined ? plain : quoted.replaceAll('""', '"'));
    if (end === "\t" && cell.lastIndex === text.length) rows.at(-1)!.push("");
    if (end.endsWith("\n") && cell.lastIndex < text.length) rows.push([]);
    if (end === "") break;
  }
  return rows;
}

/** The cells as the text that spreadsheet programs put on the clipboard; `cellsOfText` reads it back. */
export const textOfCells = (cells: readonly (readonly string[])[]): string =>
  cells.map((row) => row.map(textOfCell).join("\t")).join("\n");

const textOfCell = (text: string): string => (/[\t\r\n]|^"/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** The cells of the first table of markup, as text. */
export const cellsOfMarkup = (markup: string): string[][] =>
  [...new DOMParser().parseFromString(markup, "text/html").querySelectorAll("tr")].map((row) =>
    [...row.querySelectorAll("td")].map((cell) => cell.textContent),
  );

/** The cells as a table the grid takes over. */
export function tableMarkup(cells: readonly (readonly string[])[]): string {
  const rows = cells.map((row) => `<tr>${row.map((cell) => `<td>${markupOf(cell)}</td>`).join("")}</tr>`);
  return `<table>${rows.join("")}</table>`;
}

const markupOf = (text: string): string =>
  text.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`).replace(/\r?\n/g, "<br>");

/**
 * Puts numbers in the place of how they looked in the other program: "150,5" is 150.5 there, and 150.46 may have been
 * shown as 150.5. The usual programs say the number beside the text, each in its own attribute. Dates and percentages
 * stay as they look.
 */
export function withExactNumbers(markup: string): string {
  const document = new DOMParser().parseFromString(markup, "text/html");
  for (const cell of document.querySelectorAll("td")) {
    const number = exactNumber(cell);
    if (number !== undefined && /^[-+\d\s.,'\u00a0\u202f]+$/.test(cell.textContent)) cell.textContent = number;
  }
  return document.documentElement.outerHTML;
}

function exactNumber(cell: Element): string | undefined {
  const plain = cell.getAttribute("sdval") ?? cell.getAttribute("x:num");
  if (plain) return isNumber(plain) ? plain : undefined;
  try {
    const value = JSON.parse(cell.getAttribute("data-sheets-value") ?? "{}") as Record<string, unknown>;
    // A number is of type 3 and stands under that key.
    return value["1"] === 3 && typeof value["3"] === "number" ? String(value["3"]) : undefined;
  } catch {
    return undefined;
  }
}

const isNumber = (text: string): boolean => text.trim() !== "" && Number.isFinite(Number(text));
