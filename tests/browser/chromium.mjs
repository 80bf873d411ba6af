// @ts-check
// Where the browser for the tests is. Node's own modules only: it is asked before anything is installed.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome-stable", "google-chrome", "chrome.exe", "msedge.exe"];

const otherPlaces = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** Path of a Chromium on this machine; TAPELINE_CHROMIUM comes first. Undefined if there is none. */
export function findChromium() {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const candidates = [
    process.env.TAPELINE_CHROMIUM,
    ...names.flatMap((name) => folders.map((folder) => join(folder, name))),
    ...otherPlaces,
  ];
  return candidates.find((path) => path !== undefined && path !== "" && existsSync(path));
}

/** Installs Chromium where that takes no question: Debian's package, as root. Returns its path, if there is one now. */
export function installChromium() {
  const isDebian = process.platform === "linux" && existsSync("/usr/bin/apt-get");
  if (!isDebian || process.getuid?.() !== 0) return undefined;
  console.log("Installing Chromium (apt-get) ...");
  const environment = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
  for (const parameters of [
    ["update", "-qq"],
    ["install", "-y", "-qq", "--no-install-recommends", "chromium"],
  ]) {
    spawnSync("apt-get", parameters, { stdio: ["ignore", "ignore", "inherit"], env: environment });
  }
  return findChromium();
}

export const withoutChromium =
  "The browser tests need Chromium or Chrome, and none was found. Install it (on Debian and Ubuntu: " +
  "sudo apt-get install chromium; elsewhere from https://www.chromium.org), or set TAPELINE_CHROMIUM to its path.";

/** What Chromium is started with: no window, and nothing that would reach for the network by itself. */
export const chromiumFlags = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];
