import { dirname } from "node:path";
import type { LoaderContext } from "webpack";
import { readFunctionFiles } from "./describeFunctions";
import { referenceModule } from "./describeReference";

/** Webpack loader of src/functions/reference.ts: gives what it declares, read from the sources beside it. */
export default function loader(this: LoaderContext<object>, source: string): string {
  const folder = dirname(this.resourcePath);
  this.addContextDependency(folder);
  return `${source.replace(/^export declare const .*$/gm, "")}\n${referenceModule(readFunctionFiles(folder))}`;
}
