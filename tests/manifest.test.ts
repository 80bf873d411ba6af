import { existsSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { XMLParser, XMLValidator } from "fast-xml-parser";
import { describeFunctions, readFunctionFiles } from "../src/functions/metadata/describeFunctions";

// What Microsoft's own validator cannot be asked without sending the file away, and what its schema cannot see.
// The rules are those of the add-in documentation (Office Add-ins: manifest element ordering; shared runtime).

type Element = { readonly name: string; readonly attributes: Record<string, string>; readonly children: Element[] };

const folder = join(__dirname, "..", "manifest");
const text = readFileSync(join(folder, "manifest.xml"), "utf8");
const manifest = parse(text);
const all = descendants(manifest);

describe("the manifest", () => {
  test("is well-formed", () => {
    expect(XMLValidator.validate(text)).toBe(true);
  });

  test("has the top elements in the order Excel demands", () => {
    expect(namesOf(manifest)).toEqual([
      "Id",
      "Version",
      "ProviderName",
      "DefaultLocale",
      "DisplayName",
      "Description",
      "IconUrl",
      "HighResolutionIconUrl",
      "Hosts",
      "Requirements",
      "DefaultSettings",
      "Permissions",
      "VersionOverrides",
    ]);
  });

  test.each([
    ["VersionOverrides", ["Hosts", "Resources"]],
    ["Host", ["Runtimes", "AllFormFactors", "DesktopFormFactor"], 1],
    ["DesktopFormFactor", ["GetStarted", "FunctionFile", "ExtensionPoint"]],
    ["ExtensionPoint", ["Script", "Page", "Metadata", "Namespace"]],
    ["Group", ["Label", "Icon", "Control"]],
    ["Control", ["Label", "Supertip", "Icon", "Action"]],
    ["Action", ["TaskpaneId", "SourceLocation"]],
    ["Resources", ["bt:Images", "bt:Urls", "bt:ShortStrings", "bt:LongStrings"]],
  ])("has the children of %s in order", (name, children, index = 0) => {
    expect(namesOf(elements(name)[index])).toEqual(children);
  });

  test("has an id and a version of the right form", () => {
    const id = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";
    expect(contentOf("Id")).toMatch(new RegExp(`^${id}$`));
    expect(contentOf("Version")).toMatch(/^\d{1,5}(\.\d{1,5}){3}$/);
    // An id used twice would make Excel take one add-in for another.
    expect(text.match(new RegExp(id, "g"))).toHaveLength(1);
  });

  test("has the version of the package", () => {
    const { version } = JSON.parse(readFileSync(join(__dirname, "..", "package.json"), "utf8"));
    expect(contentOf("Version")).toBe(`${version}.0`);
  });

  test("asks for the least permission that Excel's API works with, and for one host", () => {
    expect(contentOf("Permissions")).toBe("ReadWriteDocument");
    expect(elements("Host").map(({ attributes }) => attributes.Name ?? attributes["xsi:type"])).toEqual([
      "Workbook",
      "Workbook",
    ]);
  });

  test("requires only what Excel 2021 has too", () => {
    expect(elements("Set").map(({ attributes }) => [attributes.Name, attributes.MinVersion])).toEqual([
      ["SharedRuntime", "1.1"],
      ["CustomFunctionsRuntime", "1.3"],
      ["ExcelApi", "1.13"],
    ]);
  });

  test("starts one runtime: runtime, functions, ribbon and pane name the same page", () => {
    const page = only(elements("Runtime")).attributes.resid;
    expect(only(elements("Runtime")).attributes.lifetime).toBe("long");
    expect(only(elements("FunctionFile")).attributes.resid).toBe(page);
    expect(only(only(elements("Page")).children).attributes.resid).toBe(page);
    expect(only(elements("Action")).children.at(-1)?.attributes.resid).toBe(page);
    expect(addressOf(page)).toBe(only(elements("DefaultSettings")).children[0]?.attributes.DefaultValue);
  });

  test("finds every resid, declares none twice and none in vain", () => {
    const declared = declaredResources().map(({ attributes }) => attributes.id);
    const used = all.flatMap(({ attributes }) => attributes.resid ?? []);
    expect(new Set(declared).size).toBe(declared.length);
    expect([...new Set(used)].sort()).toEqual([...declared].sort());
  });

  test("keeps names and texts within their lengths", () => {
    const tooLong = (name: string, limit: number) =>
      only(elements(name)).children.filter(({ attributes }) => (attributes.DefaultValue ?? "").length > limit);
    expect(tooLong("bt:ShortStrings", 125)).toEqual([]);
    expect(tooLong("bt:LongStrings", 250)).toEqual([]);
    expect(tooLong("bt:Urls", 2048)).toEqual([]);
    expect(only(elements("Description").slice(0, 1)).attributes.DefaultValue?.length).toBeLessThanOrEqual(250);
    expect(only(elements("DisplayName")).attributes.DefaultValue?.length).toBeLessThanOrEqual(125);
    for (const { attributes } of declaredResources()) {
      expect(attributes.id?.length).toBeLessThanOrEqual(32);
      expect(attributes.DefaultValue).not.toBe("");
    }
  });

  test("speaks HTTPS, to one server", () => {
    const addresses = all.flatMap(({ attributes }) => attributes.DefaultValue ?? []).filter((it) => /^\w+:/.test(it));
    expect(addresses.filter((it) => !it.startsWith("https://localhost:3000/"))).toEqual([]);
    expect(addresses.length).toBeGreaterThan(6);
  });

  test("puts one button on the Home tab", () => {
    expect(only(elements("OfficeTab")).attributes.id).toBe("TabHome");
    const button = only(elements("Control"));
    expect(button.attributes["xsi:type"]).toBe("Button");
    expect(addressOf(button.children[0]?.attributes.resid)).toBe("Open Tapeline");
    const ids = [only(elements("Group")), button].map(({ attributes }) => attributes.id ?? "");
    expect(new Set(ids).size).toBe(2);
    for (const id of ids) expect(id.length).toBeLessThanOrEqual(125);
  });

  test.each(["Group", "Control"])("shows the icons of %s in the three sizes Excel asks for", (name) => {
    const icon = only(elements(name)).children.find((child) => child.name === "Icon");
    expect(icon?.children.map(({ attributes }) => attributes.size)).toEqual(["16", "32", "80"]);
  });

  test("has every icon, at the size it says", () => {
    const byResource = elements("bt:Image").flatMap(({ attributes: { size, resid } }) =>
      size && resid ? [[addressOf(resid), Number(size)] as const] : [],
    );
    const byName = [
      [only(elements("IconUrl")).attributes.DefaultValue, 32],
      [only(elements("HighResolutionIconUrl")).attributes.DefaultValue, 64],
    ] as const;
    for (const [address, size] of [...byResource, ...byName]) {
      const file = join(folder, "icons", basename(address ?? ""));
      expect([file, existsSync(file)]).toEqual([file, true]);
      expect(sizeOfPng(file)).toEqual([size, size]);
    }
  });

  test("names the files the build makes", () => {
    const script = only(only(elements("Script")).children).attributes.resid;
    const metadata = only(only(elements("Metadata")).children).attributes.resid;
    expect(addressOf(script)).toBe("https://localhost:3000/functions.js");
    expect(addressOf(metadata)).toBe("https://localhost:3000/functions.json");
  });
});

describe("the custom functions, as Excel will list them", () => {
  const { metadata } = describeFunctions(readFunctionFiles(join(__dirname, "..", "src", "functions")));
  const namespace = addressOf(only(elements("Namespace")).attributes.resid) ?? "";

  test("stand in our namespace", () => {
    expect(namespace).toBe("TAPELINE");
  });

  test("have names within Excel's limit, namespace and all", () => {
    for (const { name } of metadata.functions) {
      expect(name).toMatch(/^[A-Z][A-Z0-9.]{2,}$/);
      expect(`${namespace}.${name}`.length).toBeLessThanOrEqual(128);
    }
  });
});

function parse(xml: string): Element {
  const parser = new XMLParser({ preserveOrder: true, ignoreAttributes: false, attributeNamePrefix: "" });
  type Node = Record<string, unknown> & { ":@"?: Record<string, string> };
  const read = (nodes: Node[]): Element[] =>
    nodes.flatMap((node) => {
      const name = Object.keys(node).find((key) => key !== ":@") ?? "";
      if (name.startsWith("?")) return [];
      if (name === "#text") return [{ name, attributes: { text: String(node[name]) }, children: [] }];
      return [{ name, attributes: node[":@"] ?? {}, children: read(node[name] as Node[]) }];
    });
  return only(read(parser.parse(xml)));
}

function descendants(element: Element): Element[] {
  return [element, ...element.children.flatMap(descendants)];
}

function elements(name: string): Element[] {
  return all.filter((element) => element.name === name);
}

const namesOf = (element: Element | undefined): string[] => (element?.children ?? []).map(({ name }) => name);

const contentOf = (name: string): string | undefined => only(elements(name)).children[0]?.attributes.text;

function declaredResources(): Element[] {
  return only(elements("Resources")).children.flatMap(({ children }) => children);
}

function addressOf(resid: string | undefined): string | undefined {
  return declaredResources().find(({ attributes }) => attributes.id === resid)?.attributes.DefaultValue;
}

function only<T>(list: readonly T[]): T {
  const [first] = list;
  if (first === undefined || list.length > 1) throw new Error(`Expected one, got ${list.length}.`);
  return first;
}

/** Width and height stand in the first chunk of every PNG file (PNG specification, section 11.2.1). */
function sizeOfPng(file: string): [number, number] {
  const bytes = readFileSync(file);
  expect(bytes.subarray(1, 4).toString("latin1")).toBe("PNG");
  return [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
}
