import { readFileSync } from "node:fs";
import { join } from "node:path";
import { readFunctionFiles } from "../../src/functions/metadata/describeFunctions";
import { describeReference, referenceModule } from "../../src/functions/metadata/describeReference";
import loader from "../../src/functions/metadata/referenceLoader";
import { functionCode, functionReference } from "./builtReference";

const folder = join(__dirname, "../../src/functions");
const files = readFunctionFiles(folder);

const of = (id: string) => functionReference.find((help) => help.id === id)!;

describe("the reference", () => {
  test("has every function once", () => {
    const ids = functionReference.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect([...ids].sort()).toEqual(Object.keys(functionCode).sort());
  });

  test("says of a function what it answers, how it is called and what it gives", () => {
    expect(of("ASYMMETRY")).toMatchObject({
      subject: "Left and right",
      answers:
        "Left-right difference in percent of the larger side; plus where the right is larger, minus where the left is.",
      more: "Empty cells, zeros and marks such as DNS count as missing trials.",
      gives: "The difference in percent, e.g. 8.4.",
      example: "=TAPELINE.ASYMMETRY({171,174,168},{147,150,144})",
      source: expect.stringContaining("Bishop et al. 2018"),
    });
    expect(of("ASYMMETRY").parameters.map(({ name, optional }) => [name, optional])).toEqual([
      ["left", false],
      ["right", false],
      ["reduction", true],
      ["better", true],
    ]);
  });

  test("does not take the stop of an abbreviation for the end of the sentence", () => {
    expect(of("SESSIONLOAD").answers).toMatch(/one for each cell\.$/);
  });

  test.each(functionReference.map((help) => [help.id, help] as const))("%s has all its words", (_, help) => {
    expect(help.answers).toMatch(/^[A-Z].*\.$/);
    expect(help.gives).toMatch(/\.$/);
    expect(help.source).toMatch(/\.$/);
    expect(`${help.answers}${help.more}${help.gives}`).not.toMatch(/\s\s|\n/);
  });

  test("refuses a file that belongs to no subject", () => {
    const text = files.find(({ file }) => file === "trials.ts")!.text;
    expect(() => describeReference([{ file: "homeless.ts", text }])).toThrow(/homeless\.ts belongs to no subject/);
  });
});

describe("in the build", () => {
  test("the module has the reference, and fetches the heavy files as the functions themselves do", () => {
    const module = referenceModule(files);
    expect(module).toContain('"ASYMMETRY": () => import("./asymmetry").then((file) => file.asymmetry)');
    expect(module).toContain('"ICC": () => import(/* webpackChunkName: "statistics" */ "./reliability")');
  });

  test("what reference.ts declares is given, and declared no more", () => {
    const watched: string[] = [];
    const context = {
      resourcePath: join(folder, "reference.ts"),
      addContextDependency: (path: string) => watched.push(path),
    };
    const source = readFileSync(join(folder, "reference.ts"), "utf8");
    const built = loader.call(context as unknown as ThisParameterType<typeof loader>, source);
    expect(built).not.toContain("declare const");
    for (const [, name] of source.matchAll(/declare const (\w+)/g)) expect(built).toContain(`export const ${name} =`);
    expect(watched).toEqual([folder]);
  });
});
