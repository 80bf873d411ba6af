import type { Book } from "../../engine/book";
import type { XmlPart } from "../../engine/state";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";
import { text } from "./arguments";

type PartsOf = { readonly book: Book; readonly namespace: string | null };
type PartTarget = { readonly book: Book; readonly part: XmlPart };

/** The namespace of the root element, or "" where it has none. */
export function rootNamespace(xml: string): string {
  const root = /<([\w.-]+:)?[\w.-]+((?:\s+[\w:.-]+\s*=\s*(?:"[^"]*"|'[^']*'))*)\s*\/?>/.exec(
    xml.replace(/<\?.*?\?>|<!--.*?-->/gs, ""),
  );
  const prefix = root?.[1]?.slice(0, -1);
  const name = prefix ? `xmlns:${prefix}` : "xmlns";
  return (
    new RegExp(`\\s${name}\\s*=\\s*(?:"([^"]*)"|'([^']*)')`)
      .exec(root?.[2] ?? "")
      ?.slice(1)
      .find(Boolean) ?? ""
  );
}

function checked(given: unknown): string {
  const xml = text(given, "The XML");
  return /^\s*(<\?xml[^>]*\?>\s*)?<[\w:.-]+[\s\S]*>\s*$/.test(xml) ? xml : refuse("InvalidArgument", "That is no XML.");
}

const listed = ({ book, namespace }: PartsOf): PartTarget[] =>
  book.state.xmlParts
    .filter((part) => namespace === null || rootNamespace(part.xml) === namespace)
    .map((part) => ({ book, part }));

const found = (parts: PartsOf, id: unknown): PartTarget | null =>
  listed(parts).find(({ part }) => part.id === text(id, "An id")) ?? null;

const only = (parts: PartsOf): PartTarget | null => {
  const all = listed(parts);
  return all.length === 1 ? all[0]! : null;
};

const partOf = ({ book, part }: PartTarget): XmlPart =>
  book.state.xmlParts.includes(part) ? part : refuse("ItemNotFound", "The part is gone.");

export const CustomXmlPart: ProxyClass<Excel.CustomXmlPart, PartTarget> = proxyClass<Excel.CustomXmlPart, PartTarget>(
  "CustomXmlPart",
  {
    scalars: {
      id: { get: (target) => partOf(target).id },
      namespaceUri: { get: (target) => rootNamespace(partOf(target).xml) },
    },
    methods: {
      delete(target) {
        const parts = target.book.state.xmlParts;
        parts.splice(parts.indexOf(partOf(target)), 1);
      },
      getXml: { answer: (target) => partOf(target).xml },
      setXml(target, xml) {
        partOf(target).xml = checked(xml);
      },
    },
  },
);

export const CustomXmlPartScopedCollection: ProxyClass<Excel.CustomXmlPartScopedCollection, PartsOf> = proxyClass<
  Excel.CustomXmlPartScopedCollection,
  PartsOf
>("CustomXmlPartScopedCollection", {
  items: { of: () => CustomXmlPart, list: listed },
  methods: {
    getCount: { answer: (parts) => listed(parts).length },
    getItem: { of: () => CustomXmlPart, at: found },
    getItemOrNullObject: { of: () => CustomXmlPart, at: found },
    getOnlyItem: { of: () => CustomXmlPart, at: (parts) => only(parts) ?? refuse("GeneralException", "Not one part.") },
    getOnlyItemOrNullObject: { of: () => CustomXmlPart, at: only },
  },
});

export const CustomXmlPartCollection: ProxyClass<Excel.CustomXmlPartCollection, PartsOf> = proxyClass<
  Excel.CustomXmlPartCollection,
  PartsOf
>("CustomXmlPartCollection", {
  items: { of: () => CustomXmlPart, list: listed },
  methods: {
    add: {
      of: () => CustomXmlPart,
      at: ({ book }, xml) => {
        const used = new Set(book.state.xmlParts.map(({ id }) => id));
        let number = used.size + 1;
        while (used.has(`{${number}}`)) number += 1;
        const part = { id: `{${number}}`, xml: checked(xml) };
        book.state.xmlParts.push(part);
        return { book, part };
      },
    },
    getByNamespace: {
      of: () => CustomXmlPartScopedCollection,
      at: ({ book }, namespace) => ({ book, namespace: text(namespace, "A namespace") }),
    },
    getCount: { answer: (parts) => listed(parts).length },
    getItem: { of: () => CustomXmlPart, at: found },
    getItemOrNullObject: { of: () => CustomXmlPart, at: found },
  },
});
