import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(__dirname, "../..");

/** (f): what is loaded before the first custom function answers, and before the pane's first screen, as the build weighs it. */
export function bundles(): void {
  console.log("(f) bundles, against the budgets of webpack.config.js");
  const webpack = join(root, "node_modules/webpack-cli/bin/cli.js");
  spawnSync(process.execPath, [webpack, "--config-name", "add-in"], { cwd: root, stdio: "inherit" });
}
