import type { IDefinedNamesServiceParam } from "@univerjs/engine-formula";
import { fileFormula } from "./fileFormula";
import { escaped, tag } from "./markup";

export function namesMarkup(
  names: readonly IDefinedNamesServiceParam[],
  sheetIds: readonly string[],
  shownFormula: (formula: string) => string,
  printNames: readonly string[],
): string {
  const list = names.map(({ name, formulaOrRefString, localSheetId, comment, hidden }) => {
    const sheet = sheetIds.indexOf(localSheetId ?? "");
    return tag(
      "definedName",
      { name, comment, localSheetId: sheet >= 0 ? sheet : undefined, hidden: hidden === true },
      escaped(fileFormula(shownFormula(formulaOrRefString), undefined)),
    );
  });
  list.push(...printNames);
  return list.length > 0 ? tag("definedNames", {}, list) : "";
}
