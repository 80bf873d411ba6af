import { analyseWorkbook } from "./analyseWorkbook";
import { batchHelp } from "./help";
import { openWorkbook } from "./openWorkbook";
import { type Job, type Order, readOrder } from "./readOrder";
import { BatchRefusal, OrderRefusal } from "./refusal";
import { refuseStanding, saveFile } from "./saveFile";
import { many, type Voice } from "./voice";

/**
 * `npm run batch`: the same question to many workbooks, each answered in a copy. One that fails leaves no file and
 * stops none of the others.
 * Gives the exit code: 0 where every workbook was done, 1 where one was not, 2 where the order could not be followed.
 */
export async function runBatch(words: readonly string[], voice: Voice): Promise<number> {
  let order: Order | "help";
  try {
    order = readOrder(words);
  } catch (error) {
    if (!(error instanceof OrderRefusal)) throw error;
    for (const line of [error.message, ...error.details]) voice.complain(line);
    return 2;
  }
  if (order === "help") {
    voice.say(batchHelp());
    return 0;
  }
  const failed: { readonly from: string; readonly reason: string }[] = [];
  for (const [index, job] of order.jobs.entries()) {
    voice.say(`${index + 1} of ${order.jobs.length}: ${job.from}`);
    try {
      for (const line of await runJob(job, order)) voice.say(`   ${line}`);
    } catch (error) {
      const [reason, ...details] = told(error);
      for (const line of [`Not done. ${reason}`, ...details]) voice.complain(`   ${line}`);
      failed.push({ from: job.from, reason: reason! });
    }
  }
  voice.say("");
  voice.say(`${many(order.jobs.length - failed.length, "workbook")} written, ${failed.length} not done.`);
  for (const { from, reason } of failed) voice.complain(`   ${from}: ${reason}`);
  return failed.length === 0 ? 0 : 1;
}

/** Opens, analyses, saves and closes one workbook; gives the lines that tell of it. */
async function runJob({ from, to }: Job, { asked, replace }: Order): Promise<string[]> {
  refuseStanding(to, replace);
  const workbook = await openWorkbook(from);
  try {
    const { report, sheet, address, renewed, unread } = await analyseWorkbook(workbook.host, asked);
    await workbook.host.settle();
    const { bytes, losses } = workbook.save();
    refuseStanding(to, replace);
    saveFile(to, bytes);
    const { source, used, leftOut } = report.provenance;
    return [
      `${source}: ${used}, ${many(leftOut.length, "cell")} left out.`,
      `${renewed ? "Renewed" : "Written"}: ${to}, sheet "${sheet}", ${address}.`,
      ...unread.map((row) => `Not read: ${row}`),
      ...workbook.notices.map((notice) => `Not taken over from the file: ${notice}`),
      ...losses.map((loss) => `Not kept: ${loss}`),
    ];
  } finally {
    workbook.close();
  }
}

/** An error in a coach's words, the reason first. */
function told(error: unknown): string[] {
  if (error instanceof BatchRefusal) return [error.message, ...error.details];
  const message = error instanceof Error ? error.message : String(error);
  return [`Tapeline made a mistake here; please report it. ${message}`];
}
