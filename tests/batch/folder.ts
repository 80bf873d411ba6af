import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Workbook } from "exceljs";

export const sample = join(__dirname, "../../sample-workbooks/fjordvik-handball.xlsx");

/** A folder of its own for each test of a file; gone after it. */
export function folderOfOwn(): (...names: string[]) => string {
  let folder = "";
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "tapeline-batch-"));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));
  return (...names) => join(folder, ...names);
}

/** The sample workbook's sheets of hop tests in a file of their own, which opens in a moment; gone after the tests. */
export function hopTestsAlone(): () => string {
  let folder = "";
  const path = () => join(folder, "hop-tests.xlsx");
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "tapeline-batch-"));
    const workbook = await readWith(sample);
    for (const { id } of workbook.worksheets.filter(({ name }) => !name.startsWith("Hop test"))) {
      workbook.removeWorksheet(id);
    }
    await workbook.xlsx.writeFile(path());
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return path;
}

/** What the runner said, line by line. */
export function listen() {
  const said: string[] = [];
  const complained: string[] = [];
  const voice = { say: (line: string) => void said.push(line), complain: (line: string) => void complained.push(line) };
  return { voice, said, complained, heard: () => [...said, ...complained].join("\n") };
}

/** Opens a file with a library that shares no code with ours. */
export async function readWith(path: string): Promise<Workbook> {
  const workbook = new Workbook();
  await workbook.xlsx.readFile(path);
  return workbook;
}

/** Writes a workbook of one sheet with these rows. */
export async function writeWorkbook(
  path: string,
  sheet: string,
  rows: readonly (readonly unknown[])[],
): Promise<string> {
  const workbook = new Workbook();
  workbook.addWorksheet(sheet).addRows(rows.map((row) => [...row]));
  await workbook.xlsx.writeFile(path);
  return path;
}
