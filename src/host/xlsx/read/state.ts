import type { WorkbookState, XmlPart } from "../../engine/state";
import { documentPropertyElements, type HostState, hostStateNamespace } from "../hostState";
import type { WorkbookPackage } from "../package/workbookPackage";
import { childrenOf, type XmlElement } from "../package/xml";

/** What add-ins and people keep in a workbook beside its cells: properties of the document, settings, XML parts. */
export function readState(file: WorkbookPackage, own: HostState): WorkbookState {
  const root = (type: string) => {
    const path = file.linked("", type)[0];
    return path === undefined ? undefined : file.xml(path);
  };
  const parts = xmlPartPaths(file).flatMap((path): XmlPart[] => {
    const content = file.parts[path];
    if (!content) return [];
    const properties = file.linked(path, "customXmlProps")[0];
    const id = (properties && file.xml(properties)?.attributes.itemID) ?? `{${path}}`;
    return [{ id, xml: new TextDecoder().decode(content) }];
  });
  return {
    settings: own.settings,
    sheetProperties: own.sheetProperties,
    customProperties: Object.fromEntries(
      childrenOf(root("custom-properties"), "property").map((property) => [
        property.attributes.name ?? "",
        typedValue(property.children[0]),
      ]),
    ),
    documentProperties: {
      ...namedTexts(root("core-properties"), documentPropertyElements.core),
      ...namedTexts(root("extended-properties"), documentPropertyElements.app),
    },
    xmlParts: parts.filter(({ xml }) => !xml.includes(hostStateNamespace)),
  };
}

/** Excel links these parts from the workbook, LibreOffice from the root of the package. */
const xmlPartPaths = (file: WorkbookPackage): string[] =>
  [file.workbookPath, ""].flatMap((from) => file.linked(from, "customXml"));

/** What the host itself has kept in the file. */
export function readOwnState(file: WorkbookPackage): HostState {
  const nothing: HostState = { settings: {}, sheetProperties: {}, identities: { sheets: {}, tables: {} } };
  for (const path of xmlPartPaths(file)) {
    const content = file.parts[path];
    // Parts of others may be large, and need not be well-formed for us.
    if (!content || !new TextDecoder().decode(content).includes(hostStateNamespace)) continue;
    const element = file.xml(path);
    if (element?.attributes.xmlns !== hostStateNamespace) continue;
    try {
      return { ...nothing, ...(JSON.parse(element.text) as HostState) };
    } catch {
      // Another hand has changed it: what cannot be read is as if it were not there.
      return nothing;
    }
  }
  return nothing;
}

function namedTexts(source: XmlElement | undefined, names: { readonly [property: string]: string }) {
  const found = Object.entries(names).flatMap(([property, name]) => {
    const text = source?.children.find((child) => child.name === name.slice(name.indexOf(":") + 1))?.text;
    return text ? [[property, text] as const] : [];
  });
  return Object.fromEntries(found);
}

function typedValue(value: XmlElement | undefined): string | number | boolean | Date {
  const text = value?.text ?? "";
  switch (value?.name) {
    case "r8":
    case "r4":
    case "i4":
    case "int":
      return Number(text);
    case "bool":
      return text === "true" || text === "1";
    case "filetime":
    case "date":
      return new Date(text);
    default:
      return text;
  }
}
