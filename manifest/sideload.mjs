// @ts-check
// `npm run start:excel`: serves the add-in over HTTPS to Excel on this computer, and says how to load it there.
import { chmodSync, existsSync, mkdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { buildReady, dist, NotReady, nodeReady, packagesReady, root } from "../src/host/ready.mjs";
import { serve } from "../src/host/serve.mjs";

const port = 3000; // as in manifest.xml
const daysValid = 30;

try {
  nodeReady();
  packagesReady();
  buildReady(["add-in"]);
  const certificate = await trustedCertificate();
  const { address } = await serve(dist, { port, certificate });
  console.log(`\nTapeline is served to Excel from ${address}\n\n${howToLoad()}\n\nStop it with Ctrl+C.`);
} catch (error) {
  const isTaken = error instanceof Error && "code" in error && error.code === "EADDRINUSE";
  if (isTaken) console.error(`Port ${port} is in use. Stop the program that holds it; the manifest names this port.`);
  else console.error(error instanceof NotReady ? error.message : error);
  process.exitCode = 1;
}

/** A certificate for localhost that this computer trusts; where that cannot be arranged, one to be trusted by hand. */
async function trustedCertificate() {
  const certificates = await import("office-addin-dev-certs");
  if (process.platform !== "linux") {
    try {
      return await certificates.getHttpsServerOptions(daysValid);
    } catch (error) {
      console.warn(`The certificate could not be trusted by itself: ${error instanceof Error ? error.message : error}`);
    }
  }
  const folder = join(root, "certificates");
  const authority = join(folder, "ca.crt");
  const certificate = join(folder, "localhost.crt");
  const key = join(folder, "localhost.key");
  if (!existsSync(key) || daysOld(key) >= daysValid - 1) {
    mkdirSync(folder, { recursive: true });
    await certificates.generateCertificates(authority, certificate, key, daysValid);
    chmodSync(key, 0o600);
  }
  console.log(
    `\nTrust ${relative(process.cwd(), authority)} as a certificate authority in your browser (Chrome: Settings, ` +
      `Privacy and security, Security, Manage certificates, Authorities, Import), or Excel will show an empty pane. ` +
      `It is valid for ${daysValid} days and for this computer only.`,
  );
  return { key: readFileSync(key), cert: readFileSync(certificate) };
}

/** @param {string} file */
function daysOld(file) {
  return (Date.now() - statSync(file).mtimeMs) / 86_400_000;
}

function howToLoad() {
  const manifest = join(dist, "manifest.xml");
  const web =
    "Excel on the web: open a workbook, choose Home, Add-ins, More Settings, Upload My Add-in, and give it\n" +
    `  ${manifest}`;
  const windows =
    "Excel on Windows: in a second window run\n" +
    `  npx office-addin-debugging start "${manifest}"\n` +
    "  (or share the folder of the manifest and add it under File, Options, Trust Center, Trusted Add-in Catalogs).";
  const mac =
    "Excel on Mac: close Excel, then in a second window run\n" +
    "  mkdir -p ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef\n" +
    `  cp "${manifest}" ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef/\n` +
    "  open Excel and choose Home, Add-ins; Tapeline is under Developer Add-ins.";
  const here = { win32: [windows, web], darwin: [mac, web] }[/** @type {string} */ (process.platform)];
  return (here ?? [web, windows, mac]).join("\n\n");
}
