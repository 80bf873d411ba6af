import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type IFunction, parseTree } from "custom-functions-metadata";
import { type FunctionFile, inspectFile, type ReadFunction } from "./inspectFile";

/** functions.json as Excel reads it. */
export type FunctionsMetadata = {
  /** Cells that hold a data type reach an `any` parameter as an object instead of failing before we are called. */
  readonly allowCustomDataForDataTypeAny: true;
  /** Cells that hold an error reach an `any` parameter; without this one #N/A in a range and Excel never calls us. */
  readonly allowErrorForDataTypeAny: true;
  readonly functions: readonly IFunction[];
};

/** Ties the id in functions.json to the function that answers it. */
export type Association = { readonly id: string; readonly exportName: string; readonly file: string };

export type DescribedFunctions = {
  readonly metadata: FunctionsMetadata;
  readonly associations: readonly Association[];
};

/** The source files that may hold custom functions: everything in the folder itself but its index. */
export const readFunctionFiles = (folder: string): FunctionFile[] =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".ts") && name !== "index.ts")
    .sort()
    .map((file) => ({ file, text: readFileSync(join(folder, file), "utf8") }));

/**
 * Metadata and associations of all custom functions, read from their comments and signatures.
 *
 * The generator of the platform stays silent about much that fails only later, in a coach's workbook. So every file
 * is inspected first, and what the generator made is compared with what stands in the source.
 *
 * @throws one Error that lists everything wrong in all files.
 */
export function describeFunctions(files: readonly FunctionFile[]): DescribedFunctions {
  const inspected = files.map(inspectFile);
  const found = inspected.flatMap(({ functions }) => functions);
  refuseBuild([...inspected.flatMap(({ problems }) => problems), ...duplicates(found)]);

  const generated = files.map(({ file, text }) => ({ file, ...parseTree(text, file) }));
  const functions = generated.flatMap((result) => result.functions);
  refuseBuild([
    ...generated.flatMap(({ file, extras }) => extras.flatMap(({ errors }) => errors.map((it) => `${file}: ${it}`))),
    ...differences(found, functions),
  ]);

  return {
    metadata: { allowCustomDataForDataTypeAny: true, allowErrorForDataTypeAny: true, functions },
    associations: found.map(({ id, exportName, file }) => ({ id, exportName, file })),
  };
}

/**
 * Files that are fetched when the first of their functions is called: they stand on statistical distributions, which weigh more
 * than all else together. What a coach copies down a column should not be here.
 */
export const fetchedOnDemand: ReadonlySet<string> = new Set([
  "asymmetryNoise.ts",
  "change.ts",
  "loadVelocity.ts",
  "reliability.ts",
  "sprintCurves.ts",
]);

/** Module text that registers each function with Excel; it stands beside the files it imports. */
export function associateModule(associations: readonly Association[]): string {
  const lines = associations.map(({ id, exportName, file }, index) => {
    const path = JSON.stringify(`./${file.replace(/\.ts$/, "")}`);
    if (fetchedOnDemand.has(file)) {
      const fetchFile = `() => import(/* webpackChunkName: "statistics" */ ${path})`;
      return `CustomFunctions.associate(${JSON.stringify(id)}, onDemand(${fetchFile}, ${JSON.stringify(exportName)}));\n`;
    }
    const local = `function${index}`;
    return (
      `import { ${exportName} as ${local} } from ${path};\n` +
      `CustomFunctions.associate(${JSON.stringify(id)}, ${local});\n`
    );
  });
  const isNeeded = associations.some(({ file }) => fetchedOnDemand.has(file));
  return `${isNeeded ? 'import { onDemand } from "./onDemand";\n' : ""}${lines.join("")}`;
}

function duplicates(functions: readonly ReadFunction[]): string[] {
  return functions
    .filter(({ id }, index) => functions.findIndex((other) => other.id === id) < index)
    .map(({ id, place }) => `${place}: the id ${id} is taken by another function.`);
}

/** What the generator left out, added or read otherwise than it stands in the source. */
function differences(found: readonly ReadFunction[], generated: readonly IFunction[]): string[] {
  const missing = found
    .filter(({ id }) => !generated.some((other) => other.id === id))
    .map(({ id, place }) => `${place}: the generator left out ${id}.`);
  const unexpected = generated
    .filter(({ id }) => !found.some((other) => other.id === id))
    .map(({ id }) => `The generator made ${id}, which no source file declares.`);
  const changed = found.flatMap(({ id, place, parameters }) => {
    const made = generated.find((other) => other.id === id);
    if (made === undefined) return [];
    const expected = JSON.stringify(parameters);
    const got = JSON.stringify(
      made.parameters.map(({ name, type, dimensionality, optional, repeating, description }) => ({
        name,
        type,
        matrix: dimensionality === "matrix",
        optional: optional === true,
        repeating: repeating === true,
        described: (description ?? "") !== "",
      })),
    );
    return got === expected
      ? []
      : [`${place}: the generator reads the parameters of ${id} as ${got}, not ${expected}.`];
  });
  return [...missing, ...unexpected, ...changed];
}

function refuseBuild(problems: readonly string[]): void {
  if (problems.length > 0) throw new Error(`Custom functions:\n${problems.map((it) => `  ${it}`).join("\n")}`);
}
