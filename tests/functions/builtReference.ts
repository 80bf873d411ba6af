import { join } from "node:path";
import { describeFunctions, readFunctionFiles } from "../../src/functions/metadata/describeFunctions";
import { describeReference } from "../../src/functions/metadata/describeReference";
import type { FunctionCode } from "../../src/functions/reference";

/**
 * What the build makes of src/functions/reference.ts, for tests that are not built:
 * `jest.mock("../../src/functions/reference", () => jest.requireActual("../functions/builtReference"))`.
 */
const files = readFunctionFiles(join(__dirname, "../../src/functions"));

export const functionReference = describeReference(files);

export const functionCode: Readonly<Record<string, () => Promise<FunctionCode>>> = Object.fromEntries(
  describeFunctions(files).associations.map(({ id, exportName, file }) => [
    id,
    async () => (await import(`../../src/functions/${file.replace(/\.ts$/, "")}`))[exportName],
  ]),
);
