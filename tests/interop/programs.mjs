// @ts-check
// The other programs that our workbooks are handed to, where they are installed.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

/** @param {string} program @param {...string} words */
const runs = (program, ...words) => spawnSync(program, words, { encoding: "utf8", timeout: 60_000 }).status === 0;

/** LibreOffice's program for the command line, or null. `TAPELINE_LIBREOFFICE` names it where it is not found. */
export function findLibreOffice() {
  const places = [
    process.env.TAPELINE_LIBREOFFICE,
    "/Applications/LibreOffice.app/Contents/MacOS/soffice",
    "C:\\Program Files\\LibreOffice\\program\\soffice.com",
  ];
  const standing = places.find((place) => place && existsSync(place));
  return standing ?? ["soffice", "libreoffice"].find((name) => runs(name, "--version")) ?? null;
}

/** A Python that has the library openpyxl, or null. */
export function findPython() {
  const names = ["python3", "/usr/bin/python3", "python"];
  return names.find((name) => runs(name, "-c", "import openpyxl")) ?? null;
}
