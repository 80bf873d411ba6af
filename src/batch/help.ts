import { analyses } from "../analyses";
import type { AnyAnalysis } from "../analyses/analysis";
import type { FieldMeta } from "../analyses/fields";

/** What `npm run batch -- --help` prints. Analyses and settings are listed from their own declarations. */
export const batchHelp = (): string => `Asks one question of many workbooks and writes the answer into a copy of each.

  npm run batch -- --workbook IN.xlsx --analysis NAME --range "Sheet!A3:H30" --out OUT.xlsx
  npm run batch -- --workbook "squads/*.xlsx" --analysis NAME --range "Sheet!A:H" --out answers

  --workbook   a workbook; may be given several times, or be a pattern with * ? ** in quotes
  --analysis   the question, see below
  --range      where the results stand, headings included: "Hop test!A3:H29", whole columns "Hop test!A:H", one cell
               "Hop test!A3" for the block around it, or areas "Hop test!A3:A29,C3:H29"
  --kept       in place of --range: the results kept in the workbook's own table, of all days
  --out        the file for the copy; where there are several workbooks, a folder
  --options    corrections and settings as JSON, or the name of a file that holds them:
                 "test"        name of the test, where the range holds several
                 "unit"        unit of the results, where the headings do not say it
                 "hiddenRows"  true to read hidden rows too
                 "columns"     what a column is used for, by its letters: {"C":"left","D":"none"}
                 "settings"    settings of the analysis, see below
  --replace    replace a file that stands where a copy goes
  --new-sheet  write a new sheet even where a table of an earlier run could be renewed

Roles, body mass, battery and weights are taken from the workbook's own tables, where it has them.
The workbooks themselves are never changed. A workbook that cannot be answered leaves no file; the summary says why.
Exit code: 0 all done, 1 at least one not done, 2 the order could not be followed.

Analyses and their settings (the first value is taken where none is given):
${analyses.map(analysisHelp).join("\n")}`;

function analysisHelp({ id, question, settings }: AnyAnalysis): string {
  const lines = Object.entries(settings.shape).map(([name, field]) => {
    const { label, choices } = (field as { meta(): FieldMeta | undefined }).meta()!;
    const values = choices ? Object.keys(choices).join(" | ") : `${settings.parse({})[name]}`;
    return `    ${name.padEnd(12)} ${values}   (${label})`;
  });
  return [`  ${id}: ${question}`, ...lines].join("\n");
}

/** What `npm run evaluate -- --help` prints. */
export const evaluateHelp = `Prints the value of a formula as JSON, calculated in a workbook that is not changed.

  npm run --silent evaluate -- --workbook IN.xlsx "=TAPELINE.ASYMMETRY('Hop test'!C4:E4,'Hop test'!F4:H4)"

  --workbook   the workbook
  --sheet      the sheet for references that name none; the one the workbook opens on where it is left out

A single value is a number, a text or true/false; a formula that spills is an array of rows. An error is an object:
{"error":"#N/A","message":"why"}. Arguments are separated by commas, decimals written with a point.
Exit code: 0 a value or an error value was printed, 1 it could not be calculated, 2 the order could not be followed.`;
