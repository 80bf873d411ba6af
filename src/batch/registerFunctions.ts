import { join } from "node:path";
import { type DescribedFunctions, describeFunctions, readFunctionFiles } from "../functions/metadata/describeFunctions";
import type { Host } from "../host";

/** Name by which a formula calls the add-in's functions: TAPELINE.ASYMMETRY; the manifest says the same to Excel. */
const namespace = "TAPELINE";

let described: DescribedFunctions | undefined;

/** Registers every custom function with a workbook, from the comments and signatures in its source. */
export async function registerFunctions(host: Host): Promise<void> {
  described ??= describeFunctions(readFunctionFiles(join(__dirname, "../functions")));
  for (const { id, exportName, file } of described.associations) {
    const source = await import(`../functions/${file.replace(/\.ts$/, "")}`);
    host.CustomFunctions.associate(id, source[exportName]);
  }
  host.registerFunctions(described.metadata, namespace);
}
