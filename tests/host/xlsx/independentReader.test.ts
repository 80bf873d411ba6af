import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { throughTheEngine } from "./throughTheEngine";

/** A Python that has openpyxl, or none. */
const python = ["python3", "/usr/bin/python3"].find((program) => {
  try {
    execFileSync(program, ["-c", "import openpyxl"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
});
if (!python) console.log("openpyxl is not installed: what is saved is read back by exceljs only (python3-openpyxl).");

const script = `
import json, sys, openpyxl
book = openpyxl.load_workbook(sys.argv[1])
sheet = book.worksheets[0]
chart = sheet._charts[0]
print(json.dumps({
  "sheets": book.sheetnames,
  "formula": sheet["D3"].value,
  "tables": [[t.name, t.ref, [c.name for c in t.tableColumns]] for t in sheet.tables.values()],
  "note": sheet["G1"].comment.text,
  "names": [[n.name, n.attr_text, n.localSheetId] for n in book.defined_names.definedName],
  "formats": [[str(r.sqref), rule.type] for r in sheet.conditional_formatting for rule in r.rules],
  "validations": [[str(v.sqref), v.type, v.formula1] for v in sheet.data_validations.dataValidation],
  "chart": [type(chart).__name__, [s.val.numRef.f for s in chart.series], [s.cat.strRef.f for s in chart.series]],
  "title": book.properties.title,
}))
`;

/** openpyxl checks every part against the published schema while reading: a stricter reader than most programs. */
(python ? describe : describe.skip)("read back by openpyxl", () => {
  it("finds everything in the file that we saved", async () => {
    const original = new Uint8Array(readFileSync(join(__dirname, "data/everything.xlsx")));
    const { bytes } = await throughTheEngine(original, (book) => {
      book.state.documentProperties.set("title", "Hops");
      book.state.settings.set("kept", 1);
    });
    const path = join(mkdtempSync(join(tmpdir(), "tapeline-")), "saved.xlsx");
    writeFileSync(path, bytes);
    expect(JSON.parse(execFileSync(python!, ["-c", script, path], { encoding: "utf8" }))).toEqual({
      sheets: ["Hops & jumps", "Second", "Filtered"],
      formula: "=MAX(B3:C3)",
      tables: [["Hop_trials", "A1:E4", ["Athlete", "Left (cm)", "Right (cm)", "Best", "Day"]]],
      note: "Measured twice",
      names: [
        ["Left_trials", "'Hops & jumps'!$B$2:$B$4", null],
        ["Limit", "10", null],
        ["Local", "Filtered!$A$1", 2],
      ],
      formats: [
        ["B2:B4", "cellIs"],
        ["B2:B4", "expression"],
        ["C2:C4", "expression"],
        ["C2:C4", "colorScale"],
        ["D2:D4", "dataBar"],
        ["D2:D4", "iconSet"],
        ["A2:A4", "duplicateValues"],
      ],
      validations: [
        ["H2:H20", "list", '"Left,Right"'],
        ["B2:C100", "decimal", "50"],
      ],
      chart: [
        "BarChart",
        ["'Hops & jumps'!$B$2:$B$4", "'Hops & jumps'!$C$2:$C$4"],
        ["'Hops & jumps'!$A$2:$A$4", "'Hops & jumps'!$A$2:$A$4"],
      ],
      title: "Hops",
    });
  });
});
