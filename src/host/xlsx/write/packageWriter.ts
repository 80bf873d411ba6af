import type { Parts } from "../package/archive";
import { part, relationships, tag } from "./markup";

const spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** Gathers the parts of a file together with the links between them and the list of what kind each part is. */
export class PackageWriter {
  readonly #parts: Record<string, Uint8Array> = {};
  readonly #links = new Map<string, string[]>();
  readonly #kinds: string[] = [];

  /**
   * Adds a part and the link that leads to it; gives the link's id. `type` is the last word of the link's type or all
   * of it; `kind` is the last words of the part's content type or all of it.
   */
  link(from: string, type: string, path: string, content: Uint8Array, kind?: string): string {
    this.#parts[path] = content;
    const links = this.#linksFrom(from);
    const Id = `rId${links.length + 1}`;
    links.push(
      tag("Relationship", {
        Id,
        Type: type.includes("/") ? type : `${relationships}/${type}`,
        Target: relative(from, path),
      }),
    );
    if (kind) this.#kinds.push(tag("Override", { PartName: `/${path}`, ContentType: contentType(kind) }));
    return Id;
  }

  /** Adds a link to an address outside the file; gives its id. */
  linkOutside(from: string, type: string, address: string): string {
    const links = this.#linksFrom(from);
    const Id = `rId${links.length + 1}`;
    links.push(tag("Relationship", { Id, Type: `${relationships}/${type}`, Target: address, TargetMode: "External" }));
    return Id;
  }

  #linksFrom(part: string): string[] {
    const links = this.#links.get(part) ?? [];
    this.#links.set(part, links);
    return links;
  }

  parts(): Parts {
    const links = [...this.#links].map(([from, list]) => {
      const slash = from.lastIndexOf("/") + 1;
      const path = `${from.slice(0, slash)}_rels/${from.slice(slash)}.rels`;
      const xmlns = "http://schemas.openxmlformats.org/package/2006/relationships";
      return [path, part(tag("Relationships", { xmlns }, list))] as const;
    });
    const kinds = tag("Types", { xmlns: "http://schemas.openxmlformats.org/package/2006/content-types" }, [
      tag("Default", { Extension: "rels", ContentType: "application/vnd.openxmlformats-package.relationships+xml" }),
      tag("Default", { Extension: "xml", ContentType: "application/xml" }),
      tag("Default", { Extension: "vml", ContentType: "application/vnd.openxmlformats-officedocument.vmlDrawing" }),
      ...this.#kinds,
    ]);
    // Readers that look at the first bytes only expect the list of kinds in front.
    return { "[Content_Types].xml": part(kinds), ...Object.fromEntries(links), ...this.#parts };
  }
}

const contentType = (kind: string) => (kind.includes("/") ? kind : `${spreadsheet}.${kind}+xml`);

/** Target of a link as seen from the linking part's folder. */
function relative(from: string, to: string): string {
  const [here, there] = [from.split("/").slice(0, -1), to.split("/")];
  while (here.length > 0 && here[0] === there[0]) {
    here.shift();
    there.shift();
  }
  return [...here.map(() => ".."), ...there].join("/");
}
