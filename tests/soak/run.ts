import { createEngine, createHost } from "../../src/host";
import { addHops, cycle } from "./cycle";
import { hiddenIn } from "./hidden";

/**
 * `npm run soak -- 1000`: so many turns of analysing, editing, analysing again and taking back, on the headless host.
 * What a workbook hides must be as after the first turns; memory, collected before it is measured, may not grow from the
 * second half of the turns on by more than `room`.
 */
const turns = Number(process.argv[2] ?? 1000);
const room = 1.1;
const looks = 10;

async function soak(): Promise<boolean> {
  const host = createHost(createEngine());
  host.install(globalThis);
  await addHops(24);
  const every = Math.max(1, Math.floor(turns / looks));
  const seen: { readonly turn: number; readonly megabytes: number; readonly hidden: string }[] = [];
  for (let turn = 1; turn <= turns; turn += 1) {
    await cycle(host, turn);
    if (turn % every !== 0) continue;
    // What is thrown away in a later turn of the program's own loop is thrown away before it is measured.
    await new Promise((later) => setTimeout(later, 50));
    globalThis.gc!();
    const hidden = JSON.stringify(await hiddenIn(host));
    const megabytes = Math.round(process.memoryUsage().heapUsed / 1e5) / 10;
    seen.push({ turn, megabytes, hidden });
    console.log(`turn ${String(turn).padStart(5)}   ${megabytes.toFixed(1).padStart(7)} MB   ${hidden}`);
  }
  const [first, middle, last] = [seen[0]!, seen[Math.floor(seen.length / 2)]!, seen.at(-1)!];
  const faults = [
    ...(sizeless(first.hidden) === sizeless(last.hidden) ? [] : ["What the workbook hides has changed."]),
    ...(last.megabytes <= middle.megabytes * room ? [] : ["Memory grows."]),
  ];
  console.log(`${turns} turns: ${faults.length === 0 ? "nothing grew" : faults.join(" ")}`);
  return faults.length === 0;
}

/** The file's length hangs on the digits of the results, which the turns change; everything else must be equal. */
const sizeless = (hidden: string): string => hidden.replace(/"bytes":\d+/, "");

void soak().then(
  (isSound) => process.exit(isSound ? 0 : 1),
  (error) => {
    console.error(error);
    process.exit(1);
  },
);
