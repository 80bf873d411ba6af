import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import http from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve } from "../../src/host/serve.mjs";

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "served-"));
  mkdirSync(join(folder, "dist", "icons"), { recursive: true });
  writeFileSync(join(folder, "secret.txt"), "not for the world");
  writeFileSync(join(folder, "dist", "index.html"), "<p>page</p>");
  writeFileSync(join(folder, "dist", "pane.js"), "1;");
  writeFileSync(join(folder, "dist", "book.xlsx"), "bytes");
  writeFileSync(join(folder, "dist", "icons", "icon 16.png"), "bytes");
  symlinkSync(join(folder, "secret.txt"), join(folder, "dist", "link.txt"));
  server = await serve(join(folder, "dist"), { port: 0 });
});

afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true });
});

/** Asks without the tidying that URL and fetch do to a path. */
function ask(path: string, { method = "GET", host = "localhost" } = {}) {
  const { port } = new URL(server.address);
  return new Promise<{ status: number; headers: http.IncomingHttpHeaders; body: string }>((resolve, reject) => {
    const request = http.request({ host: "127.0.0.1", port, path, method, headers: { host } }, (response) => {
      let body = "";
      response.on("data", (piece) => {
        body += piece;
      });
      response.on("end", () => resolve({ status: response.statusCode ?? 0, headers: response.headers, body }));
    });
    request.on("error", reject).end();
  });
}

test.each([
  ["/", "text/html; charset=utf-8"],
  ["/index.html", "text/html; charset=utf-8"],
  ["/pane.js?4f2a", "text/javascript; charset=utf-8"],
  ["/book.xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"],
  ["/icons/icon%2016.png", "image/png"],
])("serves %s as %s", async (path, type) => {
  const { status, headers } = await ask(path);
  expect([status, headers["content-type"]]).toEqual([200, type]);
});

test.each([
  "/../secret.txt",
  "/..%2fsecret.txt",
  "/icons/../../secret.txt",
  "/%2e%2e/secret.txt",
  "//secret.txt",
  "/..\\secret.txt",
  "/link.txt",
  "/icons",
  "/icons/",
  "/none.js",
  "/%00",
  "/%E0%A4%A",
])("finds nothing at %s", async (path) => {
  const { status, body } = await ask(path);
  expect([status, body]).toEqual([404, "Not found."]);
});

test("lets no page reach or run anything of elsewhere", async () => {
  const { headers } = await ask("/");
  expect(headers["content-security-policy"]).toContain("default-src 'self'; script-src 'self';");
  expect(headers["content-security-policy"]).toContain("connect-src 'self'");
  expect(headers["x-content-type-options"]).toBe("nosniff");
});

test("only reads", async () => {
  expect((await ask("/", { method: "POST" })).status).toBe(405);
  expect(await ask("/", { method: "HEAD" })).toMatchObject({ status: 200, body: "" });
});

test("answers to no name but this machine's", async () => {
  expect((await ask("/", { host: "elsewhere.example:3100" })).status).toBe(403);
  expect((await ask("/", { host: "127.0.0.1:3100" })).status).toBe(200);
});

test("takes the next port if the first is in use, where it may", async () => {
  const port = Number(new URL(server.address).port);
  await expect(serve(folder, { port })).rejects.toThrow("EADDRINUSE");
  const second = await serve(folder, { port, nextFree: true });
  expect(Number(new URL(second.address).port)).toBeGreaterThan(port);
  await second.stop();
});
