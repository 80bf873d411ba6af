import type { WorkbookState } from "../../engine/state";
import {
  documentPropertyElements,
  type HostState,
  hostStateId,
  hostStateNamespace,
  type KnownIdentities,
} from "../hostState";
import { escaped, part, tag } from "./markup";
import type { PackageWriter } from "./packageWriter";

const packageRelationships = "http://schemas.openxmlformats.org/package/2006/relationships/metadata";
const officeDocument = "http://schemas.openxmlformats.org/officeDocument/2006";
const openXml = "application/vnd.openxmlformats-officedocument";

/** What add-ins and people keep in a workbook beside its cells: properties of the document, settings, XML parts. */
export function writeState(writer: PackageWriter, state: WorkbookState, identities: KnownIdentities): void {
  writeDocumentProperties(writer, state.documentProperties);
  const custom = Object.entries(state.customProperties);
  if (custom.length > 0) {
    writer.link("", "custom-properties", "docProps/custom.xml", customPart(custom), `${openXml}.custom-properties+xml`);
  }
  const parts = [...state.xmlParts];
  const own: HostState = {
    settings: state.settings,
    sheetProperties: Object.fromEntries(
      Object.entries(state.sheetProperties).filter(([, properties]) => Object.keys(properties).length > 0),
    ),
    identities,
  };
  // Who keeps nothing in the workbook remembers no ids either.
  if ([own.settings, own.sheetProperties, parts].some((kept) => Object.keys(kept).length > 0)) {
    parts.push({ id: hostStateId, xml: tag("state", { xmlns: hostStateNamespace }, escaped(JSON.stringify(own))) });
  }
  parts.forEach(({ id, xml }, index) => {
    const path = `customXml/item${index + 1}.xml`;
    writer.link("xl/workbook.xml", "customXml", path, new TextEncoder().encode(xml));
    const names = { "ds:itemID": id, "xmlns:ds": `${officeDocument}/customXml` };
    const content = part(tag("ds:datastoreItem", names, tag("ds:schemaRefs")));
    const kind = `${openXml}.customXmlProperties+xml`;
    writer.link(path, "customXmlProps", `customXml/itemProps${index + 1}.xml`, content, kind);
  });
}

function writeDocumentProperties(writer: PackageWriter, properties: Readonly<Record<string, string>>): void {
  const elements = (names: { readonly [property: string]: string }) =>
    Object.entries(names).flatMap(([property, name]) => {
      const value = properties[property];
      return value ? [tag(name, {}, escaped(value))] : [];
    });
  const core = elements(documentPropertyElements.core);
  if (core.length > 0) {
    const names = {
      "xmlns:cp": "http://schemas.openxmlformats.org/package/2006/metadata/core-properties",
      "xmlns:dc": "http://purl.org/dc/elements/1.1/",
    };
    const kind = "application/vnd.openxmlformats-package.core-properties+xml";
    const type = `${packageRelationships}/core-properties`;
    writer.link("", type, "docProps/core.xml", part(tag("cp:coreProperties", names, core)), kind);
  }
  const app = elements(documentPropertyElements.app);
  if (app.length > 0) {
    const names = { xmlns: `${officeDocument}/extended-properties` };
    const content = part(tag("Properties", names, app));
    writer.link("", "extended-properties", "docProps/app.xml", content, `${openXml}.extended-properties+xml`);
  }
}

function customPart(properties: readonly (readonly [name: string, value: unknown])[]): Uint8Array {
  const names = { xmlns: `${officeDocument}/custom-properties`, "xmlns:vt": `${officeDocument}/docPropsVTypes` };
  const list = properties.map(([name, value], index) =>
    // The first number is prescribed for every custom property; their own begin at 2.
    tag("property", { fmtid: "{D5CDD505-2E9C-101B-9397-08002B2CF9AE}", pid: index + 2, name }, typedValue(value)),
  );
  return part(tag("Properties", names, list));
}

function typedValue(value: unknown): string {
  if (typeof value === "number") return tag("vt:r8", {}, String(value));
  if (typeof value === "boolean") return tag("vt:bool", {}, String(value));
  if (typeof value === "object" && value !== null) {
    return tag("vt:filetime", {}, new Date(value as Date).toISOString().replace(/\.\d+Z$/, "Z"));
  }
  return tag("vt:lpwstr", {}, escaped(String(value)));
}
