import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import {
  associateModule,
  describeFunctions,
  fetchedOnDemand,
  readFunctionFiles,
} from "../../src/functions/metadata/describeFunctions";
import loader from "../../src/functions/metadata/loader";

const sound = `
/**
 * Mean of the numbers in a range; text, blanks and errors are left out.
 * @customfunction RANGE.MEAN
 * @param values Cells with results.
 * @param digits How many digits to keep; all if omitted.
 * @param others More single values.
 * @returns The mean, in the unit of the cells.
 * @example =TAPELINE.RANGE.MEAN({1;2})
 * @source Textbook.
 */
export function rangeMean(values: unknown[][], digits?: number, others?: number[]): number {
  return values.length + (digits ?? 0) + (others ?? []).length;
}
`;

const describeText = (text: string, file = "planted.ts") => describeFunctions([{ file, text }]);

describe("a sound function", () => {
  const { metadata, associations } = describeText(sound);

  test("is described as it stands in its source", () => {
    expect(metadata.functions).toEqual([
      {
        id: "RANGE.MEAN",
        name: "RANGE.MEAN",
        description: "Mean of the numbers in a range; text, blanks and errors are left out.",
        parameters: [
          { name: "values", type: "any", dimensionality: "matrix", description: "Cells with results." },
          { name: "digits", type: "number", optional: true, description: "How many digits to keep; all if omitted." },
          {
            name: "others",
            type: "number",
            optional: true,
            repeating: true,
            description: "More single values.",
          },
        ],
        result: { type: "number" },
      },
    ]);
  });

  test("gets error cells and data types handed over, not refused by Excel", () => {
    expect(metadata).toMatchObject({ allowErrorForDataTypeAny: true, allowCustomDataForDataTypeAny: true });
  });

  test("is associated with its export", () => {
    expect(associations).toEqual([{ id: "RANGE.MEAN", exportName: "rangeMean", file: "planted.ts" }]);
    expect(associateModule(associations)).toBe(
      'import { rangeMean as function0 } from "./planted";\nCustomFunctions.associate("RANGE.MEAN", function0);\n',
    );
  });

  test("is fetched when first called, if its file is heavy", () => {
    const [file] = fetchedOnDemand;
    const module = associateModule(describeText(sound, file).associations);
    expect(module).toContain('import { onDemand } from "./onDemand";');
    expect(module).toContain(`"./${file!.replace(".ts", "")}"), "rangeMean"));`);
    expect(module).not.toContain("function0");
  });
});

/** Each trap: how the sound function is spoilt, and what the build must say about it. */
const traps: [trap: string, find: string, put: string, message: RegExp][] = [
  [
    "an arrow function",
    "export function rangeMean(values: unknown[][], digits?: number, others?: number[]): number {",
    "export const rangeMean = (values: unknown[][], digits?: number, others?: number[]): number => {",
    /would be ignored/,
  ],
  ["a misspelt tag", "@customfunction", "@customfunc", /would be ignored/],
  ["a comment that is no doc comment", "/**", "/*", /would be ignored/],
  ["a nested function", sound, `export function outer() {${sound}}`, /would be ignored/],
  ["a method", sound, `export class Functions {${sound.replace("export function ", "")}}`, /would be ignored/],
  ["a function that is not exported", "export function", "function", /must be exported by its name/],
  ["a default export", "export function", "export default function", /must be exported by its name/],
  ["an async function", "export function", "export async function", /must answer at once/],
  ["a generator function", "function rangeMean", "function* rangeMean", /must not be a generator/],
  ["a generic function", "rangeMean(", "rangeMean<T>(", /must not be generic/],
  [
    "an overload",
    "others?: number[]): number {",
    "others?: number[]): number;\nexport function rangeMean(values: unknown[][]): number {",
    /must not be an overload/,
  ],
  ["no id", "@customfunction RANGE.MEAN", "@customfunction", /needs an id of its own/],
  ["a lower-case id", "RANGE.MEAN", "Range.Mean", /"Range.Mean" must be one word of upper-case/],
  ["an id with an underscore", "RANGE.MEAN", "RANGE_MEAN", /must be one word of upper-case/],
  ["an id that starts with a digit", "RANGE.MEAN", "1RANGE", /must be one word of upper-case/],
  ["an id and a second name", "RANGE.MEAN", "RANGE.MEAN RANGEMEAN", /must be one word of upper-case/],
  ["words after the tag", "RANGE.MEAN\n", "RANGE.MEAN\n * More words.\n", /must be one word of upper-case/],
  ["a two-letter id", "RANGE.MEAN", "CV", /shorter than 3/],
  ["an endless id", "RANGE.MEAN", "A".repeat(129), /longer than 128/],
  ["an id that is a cell", "RANGE.MEAN", "ABC1", /reads as a cell/],
  ["an id that is a cell in R1C1 style", "RANGE.MEAN", "R1C1", /reads as a cell/],
  ["a second comment", "/**\n * Mean", "/** Something else. */\n/**\n * Mean", /more than one comment/],
  [
    "no description",
    "Mean of the numbers in a range; text, blanks and errors are left out.",
    "",
    /needs a description: it is what Excel shows/,
  ],
  ["a link in the comment", "Mean of", "Mean of {@link values}", /must be plain text/],
  ["a link in a parameter's words", "Cells with", "Cells {@link with}", /must be plain text/],
  ["a parameter without a line", " * @param digits How many digits to keep; all if omitted.\n", "", /"digits" needs a/],
  ["a parameter without words", "digits How many digits to keep; all if omitted.", "digits", /"digits" needs a/],
  ["words for no parameter", "@param digits", "@param decimals", /decimals describes no parameter/],
  ["words said twice", "@param digits", "@param values Again.\n * @param digits", /values stands twice/],
  ["a type in the comment", "@param digits", "@param {number} digits", /must carry no \{type\}/],
  ["brackets around a required parameter", "@param values", "@param [values]", /make a required parameter optional/],
  ["a default value", "digits?: number", "digits = 2", /default value, which never applies/],
  ["a rest parameter", "others?: number[]", "...others: number[]", /must not be "...rest"/],
  ["a pattern", "digits?: number", "{ digits }: { digits: number }", /must have a plain name/],
  ["a required parameter after an optional one", "others?:", "others:", /"digits" is optional but stands before/],
  ["a repeating parameter in the middle", "digits?: number", "digits?: number[]", /"digits" repeats/],
  ["repeating ranges in the middle", "values: unknown[][]", "values: unknown[][][]", /"values" repeats/],
  ["four dimensions", "values: unknown[][]", "values: unknown[][][][]", /too many dimensions/],
  ["a range of numbers", "values: unknown[][]", "values: number[][]", /must be unknown\[\]\[\]/],
  ["repeating ranges of text", "others?: number[]", "others?: string[][][]", /must be unknown\[\]\[\]/],
  ["a parameter without a type", "digits?: number", "digits?", /"digits" must be number, string/],
  ["a union, which becomes any", "digits?: number", "digits?: number | null", /"digits" must be number, string/],
  [
    "a literal type, which becomes any",
    "digits?: number",
    'digits?: "best" | "mean"',
    /"digits" must be number, string/,
  ],
  ["a type of our own", "digits?: number", "digits?: Digits", /"digits" must be number, string/],
  ["a read-only range", "values: unknown[][]", "values: readonly unknown[][]", /"values" must be number, string/],
  ["the invocation", "others?: number[]", "others: CustomFunctions.Invocation", /asks for the invocation/],
  ["@volatile", " * @returns", " * @volatile\n * @returns", /@volatile is not used/],
  ["@requiresAddress", " * @returns", " * @requiresAddress\n * @returns", /@requiresAddress is not used/],
  [
    "@requiresParameterAddresses",
    " * @returns",
    " * @requiresParameterAddresses\n * @returns",
    /@requiresParameterAddresses is not used/,
  ],
  ["@streaming", " * @returns", " * @streaming\n * @returns", /@streaming is not used/],
  ["@cancelable", " * @returns", " * @cancelable\n * @returns", /@cancelable is not used/],
  ["@supportSync", " * @returns", " * @supportSync\n * @returns", /@supportSync is not used/],
  ["no @returns", " * @returns The mean, in the unit of the cells.\n", "", /needs @returns/],
  ["a type in @returns", "@returns The", "@returns {number} The", /@returns must carry no/],
  ["no example", " * @example =TAPELINE.RANGE.MEAN({1;2})\n", "", /needs @example =TAPELINE.RANGE.MEAN/],
  ["an example of another function", "TAPELINE.RANGE.MEAN", "TAPELINE.MEAN", /needs @example =TAPELINE.RANGE.MEAN/],
  ["no source", " * @source Textbook.\n", "", /needs @source/],
  ["no return type", "[]): number {", "[]) {", /must declare what it returns/],
  ["a promise", "[]): number {", "[]): Promise<number> {", /must declare what it returns/],
  ["nothing returned", "[]): number {", "[]): void {", /must declare what it returns/],
  ["a list, which Excel cannot spill", "[]): number {", "[]): number[] {", /must declare what it returns/],
  ["a union of cell and range", "[]): number {", "[]): number | number[][] {", /must declare what it returns/],
];

describe("the build refuses", () => {
  test.each(traps)("%s", (_trap, find, put, message) => {
    const spoilt = sound.replace(find, put);
    expect(spoilt).not.toBe(sound);
    expect(() => describeText(spoilt)).toThrow(message);
  });

  test("the same id in two files", () => {
    const files = ["first.ts", "second.ts"].map((file) => ({ file, text: sound }));
    expect(() => describeFunctions(files)).toThrow("second.ts:12: the id RANGE.MEAN is taken by another function.");
  });

  test("with every problem of every file in one message, each with its line", () => {
    const files = [
      { file: "first.ts", text: sound.replace("RANGE.MEAN", "CV").replace("digits?: number", "digits = 2") },
      { file: "second.ts", text: sound.replace("export ", "") },
    ];
    expect(() => describeFunctions(files)).toThrow(/first\.ts:12: .*"CV".*first\.ts:12: .*"digits".*second\.ts:12:/s);
  });

  test("what the platform's generator itself refuses or reads otherwise", () => {
    const twice = `${sound}\n${sound.replaceAll("RANGE.MEAN", "OTHER.MEAN")}`;
    expect(() => describeText(twice)).toThrow(/Duplicate function name: rangeMean/);
  });
});

describe("what is allowed", () => {
  test.each([
    ["a number or a text", "[]): number | string {"],
    ["a spilling block", "[]): unknown[][] {"],
    ["any", "[]): any {"],
  ])("returning %s", (_what, put) => {
    expect(describeText(sound.replace("[]): number {", put)).metadata.functions).toHaveLength(1);
  });

  test("brackets around a parameter that is optional", () => {
    expect(describeText(sound.replace("@param digits", "@param [digits]")).metadata).toEqual(
      describeText(sound).metadata,
    );
  });

  test("functions and exports beside them that are no custom functions", () => {
    const text = `export const limit = 3;\nexport function plain(n = 1) { return n; }\n${sound}`;
    expect(describeText(text).associations.map(({ id }) => id)).toEqual(["RANGE.MEAN"]);
  });
});

describe("in the build", () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), "functions-"));
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  const load = () => {
    const emitted: Record<string, string> = {};
    const watched: string[] = [];
    const context = {
      resourcePath: join(folder, "index.ts"),
      addContextDependency: (path: string) => watched.push(path),
      emitFile: (name: string, content: string) => {
        emitted[name] = content;
      },
    };
    const code = loader.call(context as unknown as ThisParameterType<typeof loader>, "// the index\n");
    return { code, emitted, watched };
  };

  test("functions.json and the associations name the same ids", () => {
    writeFileSync(join(folder, "index.ts"), "// the index\n");
    writeFileSync(join(folder, "range.ts"), sound);
    writeFileSync(join(folder, "other.ts"), sound.replaceAll("RANGE.MEAN", "OTHER.MEAN"));
    const { code, emitted, watched } = load();
    const described = JSON.parse(emitted["functions.json"] ?? "").functions.map(({ id }: { id: string }) => id);
    const associated = [...code.matchAll(/associate\("(.+?)"/g)].map(([, id]) => id);
    expect(described).toEqual(["OTHER.MEAN", "RANGE.MEAN"]);
    expect(associated).toEqual(described);
    expect(code.startsWith("// the index\n")).toBe(true);
    expect(watched).toEqual([folder]);
  });

  test("a trap stops it", () => {
    writeFileSync(join(folder, "range.ts"), sound.replace("export ", ""));
    expect(load).toThrow(/must be exported/);
  });
});

describe("the functions of this house", () => {
  const files = readFunctionFiles(join(__dirname, "../../src/functions"));
  const { metadata, associations } = describeFunctions(files);

  test("pass, each with its association", () => {
    expect(associations.map(({ id }) => id)).toEqual(metadata.functions.map(({ id }) => id));
    expect(associations.length).toBeGreaterThan(0);
  });

  test("are fetched on demand from files that are there", () => {
    const names = files.map(({ file }) => file);
    expect([...fetchedOnDemand].filter((file) => !names.includes(file))).toEqual([]);
  });

  test.each(metadata.functions.map((described) => [described.id, described] as const))(
    "%s says in full how it is called",
    (_, { description, parameters }) => {
      expect(description).toMatch(/^[A-Za-z].{40,}\.$/s);
      for (const { name, optional, description: words = "" } of parameters) {
        expect({ name, words }).toEqual({
          name,
          words: expect.stringMatching(optional ? /left out|none|when|without/i : /e\.g\./),
        });
        expect({ name, words }).toEqual({ name, words: expect.stringMatching(/^[A-Za-z].*\.$/s) });
      }
    },
  );

  test.each(metadata.functions.map((described) => [described.id, described] as const))(
    "%s says what becomes of empty cells, zeros or gaps",
    (_, { description, parameters }) => {
      const words = [description, ...parameters.map((parameter) => parameter.description)].join(" ");
      expect(words).toMatch(/empty|missing|0 is|dash|left out/i);
    },
  );
});
