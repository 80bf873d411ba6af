// @ts-check
// What must be in place before anything can be served or tested: a Node that is new enough, the packages of the lock
// file, and a build no older than its sources. Runs before anything is installed, so Node's own modules only.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../../", import.meta.url));
export const dist = join(root, "dist");

/** Thrown where there is nothing to do but tell: its message is for the person at the keyboard. */
export class NotReady extends Error {}

export function nodeReady(version = process.versions.node) {
  if (Number.parseInt(version, 10) < 20) {
    throw new NotReady(`Node 20 or newer is needed; this is ${version}. It is at https://nodejs.org.`);
  }
}

/** Installs what the lock file names, unless it is all there. */
export function packagesReady() {
  if (lockedPackagesPresent()) return;
  // What a command answers with stands alone in its output; how it got ready does not belong there.
  console.error("Installing packages (npm ci) ...");
  run("npm", ["ci"], "The packages could not be installed.");
}

/**
 * Builds each named half of webpack.config.js whose sources have changed since it was last built.
 * @param {("add-in" | "host")[]} names
 */
export function buildReady(names) {
  for (const name of names) {
    const stamp = join(root, ".cache", `${name}.built`);
    const fingerprint = fingerprintOf(name);
    if (builtPages[name].every((page) => existsSync(join(dist, page))) && read(stamp) === fingerprint) continue;
    console.error(`Building the ${name} ...`);
    rmSync(stamp, { force: true });
    const cli = join(root, "node_modules", "webpack-cli", "bin", "cli.js");
    run(process.execPath, [cli, "--config-name", name], `The ${name} could not be built.`);
    mkdirSync(dirname(stamp), { recursive: true });
    writeFileSync(stamp, fingerprint);
  }
}

const builtPages = {
  "add-in": ["taskpane.html", "taskpane-embedded.html", "functions.json"],
  host: ["index.html", "bridge.js"],
};

/** What each half is built from, and what of that belongs to the other half alone. */
const sources = {
  "add-in": {
    from: ["src", "manifest", join("sample-workbooks", "typescript.cjs")],
    except: join("src", "host"),
  },
  host: { from: [join("src", "host"), "sample-workbooks", join("manifest", "icons")], except: undefined },
};

/**
 * Stands for the content of everything a half is built from.
 * @param {"add-in" | "host"} name
 * @param {string} [folder]
 */
export function fingerprintOf(name, folder = root) {
  const hash = createHash("sha256").update(process.env.TAPELINE_URL ?? "");
  const { from, except } = sources[name];
  for (const path of [...from, "package-lock.json", "webpack.config.js"].flatMap((it) => filesOf(folder, it, except))) {
    hash.update(`\0${path}\0`).update(readFileSync(join(folder, path)));
  }
  return hash.digest("hex");
}

/**
 * Files at or below a path, relative to the folder, in a fixed order.
 * @param {string} folder
 * @param {string} path
 * @param {string} [except] A path to leave out.
 * @returns {string[]}
 */
function filesOf(folder, path, except) {
  if (path === except) return [];
  if (!statSync(join(folder, path)).isDirectory()) return [path];
  return readdirSync(join(folder, path))
    .sort()
    .flatMap((name) => filesOf(folder, join(path, name), except));
}

/**
 * Whether all that the lock file names is installed. npm keeps a second lock file inside node_modules that says what
 * really stands there; packages for other kinds of machine are optional and may be missing.
 * @param {string} [folder]
 */
export function lockedPackagesPresent(folder = root) {
  const wanted = packagesIn(join(folder, "package-lock.json"));
  const present = packagesIn(join(folder, "node_modules", ".package-lock.json"));
  return Object.entries(wanted).every(
    ([path, { version, optional }]) => path === "" || optional || present[path]?.version === version,
  );
}

/**
 * @param {string} lockFile
 * @returns {Record<string, { version: string, optional?: boolean }>}
 */
function packagesIn(lockFile) {
  return JSON.parse(read(lockFile) ?? "{}").packages ?? {};
}

/** @param {string} file */
function read(file) {
  return existsSync(file) ? readFileSync(file, "utf8") : undefined;
}

/**
 * Runs a program in the root with its output shown, all of it as messages (stderr).
 * @param {string} program
 * @param {string[]} parameters
 * @param {string} otherwise What to say if it fails.
 */
function run(program, parameters, otherwise) {
  const shell = process.platform === "win32" && program === "npm"; // npm is a batch file there
  const { status } = spawnSync(program, parameters, { cwd: root, stdio: ["inherit", 2, 2], shell });
  if (status !== 0) throw new NotReady(otherwise);
}
