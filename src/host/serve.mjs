// @ts-check
// A file server for dist/ and nothing else: this machine only, no listing, no way out of the folder.
import { createReadStream, realpathSync, statSync } from "node:fs";
import http from "node:http";
import https from "node:https";
import { extname, join, sep } from "node:path";

/** @type {Record<string, string>} */
const mediaTypes = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".ico": "image/x-icon",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".txt": "text/plain; charset=utf-8",
  ".woff2": "font/woff2",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ".xml": "text/xml; charset=utf-8",
};

/** Nothing but what this server holds may run or be reached. */
const localOnly = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "frame-ancestors 'self'",
].join("; ");

/**
 * Serves a folder on localhost.
 * @param {string} folder
 * @param {object} options
 * @param {number} options.port First port to try; 0 takes any free one.
 * @param {boolean} [options.nextFree] Whether to take a later port if that one is in use.
 * @param {{ key: Buffer, cert: Buffer }} [options.certificate] Serves over HTTPS, to Excel: its pages say themselves
 *   what they may reach.
 * @returns {Promise<{ address: string, stop: () => Promise<void> }>}
 */
export async function serve(folder, { port, nextFree = false, certificate }) {
  const headers = certificate ? { "Access-Control-Allow-Origin": "*" } : { "Content-Security-Policy": localOnly };
  /** @type {http.RequestListener} */
  const answer = (request, response) => respond(folder, headers, request, response);
  const server = certificate ? https.createServer(certificate, answer) : http.createServer(answer);
  const taken = await listen(server, port, nextFree ? port + 50 : port);
  return {
    address: `${certificate ? "https" : "http"}://localhost:${taken}`,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/**
 * @param {http.Server | https.Server} server
 * @param {number} port
 * @param {number} lastPort
 * @returns {Promise<number>} The port taken.
 */
function listen(server, port, lastPort) {
  return new Promise((resolve, reject) => {
    server.once("error", (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === "EADDRINUSE" && port < lastPort) resolve(listen(server, port + 1, lastPort));
      else reject(error);
    });
    server.listen({ port, host: "127.0.0.1" }, () => {
      server.removeAllListeners("error");
      const address = server.address();
      resolve(typeof address === "object" && address ? address.port : port);
    });
  });
}

/**
 * @param {string} folder
 * @param {Record<string, string>} headers
 * @param {http.IncomingMessage} request
 * @param {http.ServerResponse} response
 */
function respond(folder, headers, request, response) {
  /** @param {number} status @param {string} words */
  const refuse = (status, words) => {
    response.writeHead(status, { ...headers, "Content-Type": "text/plain; charset=utf-8" });
    response.end(words);
  };
  if (!isLocal(request.headers.host)) return refuse(403, "Only for this machine.");
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(405, "Only reading.");
  const file = fileFor(folder, request.url ?? "/");
  if (file === undefined) return refuse(404, "Not found.");
  response.writeHead(200, {
    ...headers,
    "Content-Type": mediaTypes[extname(file)] ?? "application/octet-stream",
    "Content-Length": statSync(file).size,
    "Cache-Control": "max-age=0, must-revalidate",
    "Last-Modified": statSync(file).mtime.toUTCString(),
    "X-Content-Type-Options": "nosniff",
  });
  if (request.method === "HEAD") response.end();
  else createReadStream(file).pipe(response);
}

/**
 * A page elsewhere could point a name of its own at this machine; it is then that name that is asked for.
 * @param {string | undefined} host
 */
function isLocal(host) {
  return /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/.test(host ?? "");
}

/**
 * The file a path asks for; undefined if there is none inside the folder.
 * @param {string} folder
 * @param {string} url
 */
function fileFor(folder, url) {
  try {
    const path = decodeURIComponent(url.split(/[?#]/)[0] ?? "/");
    const home = realpathSync(folder);
    const file = realpathSync(join(home, path.endsWith("/") ? `${path}index.html` : path));
    return file.startsWith(home + sep) && statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined; // not decodable, or not there
  }
}
