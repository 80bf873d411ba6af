import { spawnSync } from "node:child_process";
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, dirname, join } from "node:path";
import { fingerprintOf, lockedPackagesPresent, nodeReady } from "../../src/host/ready.mjs";

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "ready-"));
});
afterEach(() => rmSync(folder, { recursive: true }));

function write(path: string, content: string | object) {
  mkdirSync(dirname(join(folder, path)), { recursive: true });
  writeFileSync(join(folder, path), typeof content === "string" ? content : JSON.stringify(content));
}

describe("nodeReady(version)", () => {
  test.each(["20.0.0", "22.15.1"])("takes %s", (version) => {
    expect(() => nodeReady(version)).not.toThrow();
  });
  test.each(["18.20.4", "9.9.9"])("refuses %s, and says what is needed", (version) => {
    expect(() => nodeReady(version)).toThrow(`Node 20 or newer is needed; this is ${version}.`);
  });
});

describe("lockedPackagesPresent(folder)", () => {
  const wanted = {
    packages: {
      "": { version: "0.1.0" },
      "node_modules/a": { version: "1.0.0" },
      "node_modules/for-another-machine": { version: "1.0.0", optional: true },
    },
  };

  test("is false on a fresh clone", () => {
    write("package-lock.json", wanted);
    expect(lockedPackagesPresent(folder)).toBe(false);
  });

  test.each([
    ["true when all is there", "1.0.0", true],
    ["false when a version is another", "0.9.0", false],
  ])("is %s", (_what, version, expected) => {
    write("package-lock.json", wanted);
    write("node_modules/.package-lock.json", { packages: { "node_modules/a": { version } } });
    expect(lockedPackagesPresent(folder)).toBe(expected);
  });
});

describe("packagesReady()", () => {
  // An npm of our own, since the machine's would go out for packages.
  const onUnix = process.platform === "win32" ? test.skip : test;
  onUnix("installs on a fresh clone, and says all of it in the messages: an answer stands alone in the output", () => {
    write("package-lock.json", { packages: { "": {}, "node_modules/a": { version: "1.0.0" } } });
    write("bin/npm", "#!/bin/sh\necho added 1 package\n");
    chmodSync(join(folder, "bin/npm"), 0o755);
    mkdirSync(join(folder, "src/host"), { recursive: true });
    copyFileSync(join(__dirname, "../../src/host/ready.mjs"), join(folder, "src/host/ready.mjs"));
    write("ask.mjs", 'import { packagesReady } from "./src/host/ready.mjs";\npackagesReady();\nconsole.log("42");\n');
    const { stdout, stderr } = spawnSync(process.execPath, [join(folder, "ask.mjs")], {
      encoding: "utf8",
      env: { ...process.env, PATH: `${join(folder, "bin")}${delimiter}${process.env.PATH}` },
    });
    expect(stdout).toBe("42\n");
    expect(stderr).toBe("Installing packages (npm ci) ...\nadded 1 package\n");
  });
});

describe("fingerprintOf(half, folder)", () => {
  beforeEach(() => {
    for (const path of ["package-lock.json", "webpack.config.js"]) write(path, "");
    write("src/pane/App.tsx", "1");
    write("src/host/index.ts", "1");
    write("manifest/icons/icon-16.png", "1");
    write("sample-workbooks/typescript.cjs", "1");
    write("sample-workbooks/club.xlsx", "1");
  });

  test.each([
    ["src/pane/App.tsx", ["add-in"]],
    ["src/host/index.ts", ["host"]],
    ["sample-workbooks/club.xlsx", ["host"]],
    ["webpack.config.js", ["add-in", "host"]],
    ["src/engine/new.ts", ["add-in"]],
  ])("changes with %s for %s alone", (path, expected) => {
    const halves = ["add-in", "host"] as const;
    const before = halves.map((half) => fingerprintOf(half, folder));
    expect(halves.map((half) => fingerprintOf(half, folder))).toEqual(before);
    write(path, "2");
    expect(halves.filter((half, index) => fingerprintOf(half, folder) !== before[index])).toEqual(expected);
  });

  test("changes when a file is gone", () => {
    const before = fingerprintOf("add-in", folder);
    rmSync(join(folder, "src/pane/App.tsx"));
    expect(fingerprintOf("add-in", folder)).not.toBe(before);
  });
});
