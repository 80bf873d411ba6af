/**
 * What add-ins keep in a workbook for which the file format has no open place (settings, properties of sheets) goes
 * into an XML part of this namespace. Other programs carry such parts along unread.
 */
export const hostStateNamespace = "urn:tapeline:embedded-host:state";
export const hostStateId = "{7A9E11A0-5EED-4C0A-8F00-7461706C696E}";

/** Ids of sheets and of tables by their names, for programs that drop the ids themselves from the file. */
export type KnownIdentities = {
  readonly sheets: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, string>>;
};

export type HostState = {
  readonly settings: Record<string, unknown>;
  /** By the ids of the sheets. */
  readonly sheetProperties: Record<string, Record<string, string>>;
  readonly identities: KnownIdentities;
};

/** Where each property of the document stands in the file: which of two parts, and the element's name there. */
export const documentPropertyElements = {
  core: {
    title: "dc:title",
    subject: "dc:subject",
    author: "dc:creator",
    keywords: "cp:keywords",
    comments: "dc:description",
    lastAuthor: "cp:lastModifiedBy",
    revisionNumber: "cp:revision",
    category: "cp:category",
  },
  app: { manager: "Manager", company: "Company" },
} as const;
