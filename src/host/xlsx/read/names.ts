import type { IDefinedNamesServiceParam } from "@univerjs/engine-formula";
import { plainFormula } from "../formulas";
import { childOf, childrenOf, truthOf, type XmlElement } from "../package/xml";

/** How the engine says that a name belongs to the whole workbook. */
export const wholeWorkbook = "AllDefaultWorkbook";

/** The workbook's names. Those that a program keeps for its own use (print areas, filters) are left out. */
export function readNames(
  workbook: XmlElement,
  sheetIds: ReadonlyMap<number, string>,
): Record<string, IDefinedNamesServiceParam> {
  const names: Record<string, IDefinedNamesServiceParam> = {};
  childrenOf(childOf(workbook, "definedNames"), "definedName").forEach((source, index) => {
    const { name = "", localSheetId, comment } = source.attributes;
    if (!name || name.startsWith("_xlnm.")) return;
    const id = `name-${index + 1}`;
    names[id] = {
      id,
      name,
      formulaOrRefString: definition(plainFormula(source.text)),
      localSheetId: localSheetId === undefined ? wholeWorkbook : (sheetIds.get(Number(localSheetId)) ?? wholeWorkbook),
      ...(comment && { comment }),
      ...(truthOf(source, "hidden") && { hidden: true }),
    };
  });
  return names;
}

/** A reference stands as it is; anything else (a constant, a calculation) needs the sign of a formula. */
const definition = (text: string) =>
  /^('(?:[^']|'')+'|[^!'"(]+)!\$?[A-Z]+\$?\d+(:\$?[A-Z]+\$?\d+)?$/i.test(text) ? text : `=${text}`;
