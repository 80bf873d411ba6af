// @ts-check
// `npm run batch` and `npm run evaluate`: the add-in's own code on the embedded host, without a page.
import { createRequire } from "node:module";
import { NotReady, nodeReady, packagesReady } from "../host/ready.mjs";

try {
  nodeReady();
  packagesReady();
  const require = createRequire(import.meta.url);
  require("../../sample-workbooks/typescript.cjs");
  const code = await require("./main.ts").main(process.argv.slice(2));
  // The grid's engine leaves timers behind that would keep Node running. What was said is written out first.
  process.stdout.write("", () => process.stderr.write("", () => process.exit(code)));
} catch (error) {
  console.error(error instanceof NotReady ? error.message : error);
  process.exit(1);
}
