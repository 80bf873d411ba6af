import { XlsxRefusal } from "../refusal";
import { type Parts, unpack } from "./archive";
import { type Consumers, childrenOf, parseXml, type XmlElement } from "./xml";

/** A link from one part to another, e.g. from a sheet to its table. */
export type Relationship = { readonly id: string; readonly type: string; readonly target: string };

/** An unpacked workbook file whose parts are found by the links between them, never by guessed names. */
export type WorkbookPackage = {
  readonly parts: Parts;
  readonly workbookPath: string;
  readonly xml: (path: string, consumers?: Consumers) => XmlElement | undefined;
  /** Links that leave a part; `type` is the last word of the link's type, e.g. "worksheet". */
  readonly linksOf: (path: string) => readonly Relationship[];
  readonly linked: (path: string, type: string) => readonly string[];
};

export function openPackage(bytes: Uint8Array): WorkbookPackage {
  const parts = unpack(bytes);
  const xml = (path: string, consumers?: Consumers) => {
    const part = parts[path];
    return part && parseXml(part, consumers);
  };
  const linksOf = (path: string) => {
    const slash = path.lastIndexOf("/") + 1;
    const links = xml(`${path.slice(0, slash)}_rels/${path.slice(slash)}.rels`);
    return childrenOf(links, "Relationship").map(
      ({ attributes: { Id = "", Type = "", Target = "", TargetMode } }): Relationship => ({
        id: Id,
        type: Type.slice(Type.lastIndexOf("/") + 1),
        target: TargetMode === "External" ? Target : resolve(path, Target),
      }),
    );
  };
  const linked = (path: string, type: string) =>
    linksOf(path)
      .filter((link) => link.type === type)
      .map((link) => link.target);
  const workbookPath = linked("", "officeDocument")[0];
  if (!workbookPath || !parts[workbookPath]) {
    throw new XlsxRefusal("This is a packed file, but no workbook. In your spreadsheet program, save as .xlsx.");
  }
  refuseActiveContent(parts, linksOf(workbookPath));
  return { parts, workbookPath, xml, linksOf, linked };
}

function refuseActiveContent(parts: Parts, links: readonly Relationship[]): void {
  const paths = Object.keys(parts);
  if (paths.some((path) => /vbaProject|macrosheets\//i.test(path))) {
    throw new XlsxRefusal("This workbook contains macros. Save it as .xlsx, which leaves them out, and open that.");
  }
  if (links.some((link) => link.type === "externalLink")) {
    throw new XlsxRefusal(
      "This workbook takes values from other files. In your spreadsheet program, break those links (keeping the values) and save.",
    );
  }
}

/** Path of a link's target: absolute ones start at the package's root, others at the folder of the linking part. */
function resolve(from: string, target: string): string {
  if (target.startsWith("/")) return target.slice(1);
  const steps = from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== ".") steps.push(step);
  }
  return steps.join("/");
}
