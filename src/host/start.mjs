// @ts-check
// `npm start`: Tapeline beside a spreadsheet of its own, on this machine, without Excel.
import { buildReady, dist, NotReady, nodeReady, packagesReady } from "./ready.mjs";
import { serve } from "./serve.mjs";

try {
  nodeReady();
  packagesReady();
  buildReady(["add-in", "host"]);
  const wanted = process.env.PORT;
  const { address } = await serve(dist, { port: Number(wanted ?? 3100), nextFree: wanted === undefined });
  console.log(`\nTapeline is at ${address}\nStop it with Ctrl+C.`);
} catch (error) {
  console.error(error instanceof NotReady ? error.message : error);
  process.exitCode = 1;
}
