import { parseArgs } from "node:util";
import { evaluateFormula } from "./evaluateFormula";
import { evaluateHelp } from "./help";
import { openWorkbook } from "./openWorkbook";
import { BatchRefusal, OrderRefusal } from "./refusal";
import type { Voice } from "./voice";

type Order = { readonly workbook: string; readonly formula: string; readonly sheet: string | undefined };

/** `npm run evaluate`: says a formula's value as JSON. Gives the exit code, as the help tells it. */
export async function runEvaluate(words: readonly string[], voice: Voice): Promise<number> {
  try {
    const order = readOrder(words);
    voice.say(order === "help" ? evaluateHelp : JSON.stringify(await evaluated(order)));
    return 0;
  } catch (error) {
    if (!(error instanceof BatchRefusal)) throw error;
    for (const line of [error.message, ...error.details]) voice.complain(line);
    return error instanceof OrderRefusal ? 2 : 1;
  }
}

async function evaluated({ workbook: path, formula, sheet }: Order) {
  const workbook = await openWorkbook(path);
  try {
    return await evaluateFormula(workbook.host, formula, sheet);
  } finally {
    workbook.close();
  }
}

function readOrder(words: readonly string[]): Order | "help" {
  const { values, positionals } = parse(words);
  if (values.help) return "help";
  const [formula, ...more] = positionals;
  if (values.workbook === undefined || formula === undefined || formula.trim() === "" || more.length > 0) {
    throw new OrderRefusal("Give one --workbook and one formula in quotes. --help shows how to write it.");
  }
  return { workbook: values.workbook, formula: formula.trim(), sheet: values.sheet };
}

function parse(words: readonly string[]) {
  try {
    return parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        workbook: { type: "string" },
        sheet: { type: "string" },
        help: { type: "boolean", short: "h" },
      },
    });
  } catch (error) {
    throw new OrderRefusal(error instanceof Error ? error.message : String(error));
  }
}
