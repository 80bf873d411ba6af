import { dirname } from "node:path";
import type { LoaderContext } from "webpack";
import { associateModule, describeFunctions, readFunctionFiles } from "./describeFunctions";

/**
 * Webpack loader of src/functions/index.ts: emits functions.json and adds the associations to the module,
 * so that both always come from the same reading of the sources.
 */
export default function loader(this: LoaderContext<object>, source: string): string {
  const folder = dirname(this.resourcePath);
  this.addContextDependency(folder);
  const { metadata, associations } = describeFunctions(readFunctionFiles(folder));
  this.emitFile("functions.json", `${JSON.stringify(metadata, null, 2)}\n`);
  return `${source}\n${associateModule(associations)}`;
}
