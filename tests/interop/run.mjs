// @ts-check
// `npm run test:interop`: hands workbooks to and fro between us and other programs. Not a part of `npm test`, since
// they are large and not everywhere; where one is missing, that is said and is no success.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { NotReady, nodeReady, packagesReady, root } from "../../src/host/ready.mjs";
import { findLibreOffice, findPython } from "./programs.mjs";

try {
  nodeReady();
  packagesReady();
  const missing = [
    ...(findLibreOffice()
      ? []
      : ["LibreOffice is not installed (https://www.libreoffice.org; Debian: libreoffice-calc)."]),
    ...(findPython() ? [] : ["Python with openpyxl is not installed (Debian: python3-openpyxl)."]),
  ];
  const jest = join(root, "node_modules", "jest", "bin", "jest.js");
  const words = ["--selectProjects", "interop", "--runInBand", "--forceExit", "--verbose"];
  const { status } = spawnSync(process.execPath, [jest, ...words], { cwd: root, stdio: "inherit" });
  for (const line of missing) console.error(`\n${line} What needs it was NOT tested.`);
  process.exitCode = status === 0 && missing.length === 0 ? 0 : 1;
} catch (error) {
  console.error(error instanceof NotReady ? error.message : error);
  process.exitCode = 1;
}
