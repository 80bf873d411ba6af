import type { Password } from "../../engine/passwords";
import type { Lock } from "../../engine/protection";
import { truthOf, type XmlElement } from "../package/xml";
import { allowedUnlessForbidden, protectionAttributes } from "../protections";

/** What a sheet is protected with; `undefined` where it is not. */
export function readSheetProtection(source: XmlElement | undefined): Lock | undefined {
  if (!source || !truthOf(source, "sheet")) return undefined;
  const options: Record<string, unknown> = {};
  for (const [attribute, option] of Object.entries(protectionAttributes)) {
    options[option] = !truthOf(source, attribute, !allowedUnlessForbidden.includes(attribute));
  }
  const unlockedOnly = truthOf(source, "selectLockedCells");
  const nothing = unlockedOnly && truthOf(source, "selectUnlockedCells");
  options.selectionMode = nothing ? "None" : unlockedOnly ? "Unlocked" : "Normal";
  return { options, password: passwordOf(source, /^(password|algorithmName|hashValue|saltValue|spinCount)$/) };
}

/** What the order and names of the sheets are protected with; `undefined` where they are not. */
export function readStructureProtection(source: XmlElement | undefined): Password | undefined {
  if (!source || !truthOf(source, "lockStructure")) return undefined;
  return passwordOf(source, /^workbook(Password|AlgorithmName|HashValue|SaltValue|SpinCount)$/);
}

/** A workbook's attributes are those of a sheet with "workbook" before them. */
function passwordOf({ attributes }: XmlElement, names: RegExp): Password {
  const kept = Object.entries(attributes)
    .filter(([name]) => names.test(name))
    .map(([name, value]) => [name.replace(/^workbook(.)/, (_, first: string) => first.toLowerCase()), value]);
  return kept.length === 0 ? "" : { attributes: Object.fromEntries(kept) };
}
