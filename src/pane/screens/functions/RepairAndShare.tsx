import { useState } from "react";
import type { Deed } from "../../../sheet/deed";
import { type Repaired, repairFormulas } from "../../../sheet/repairFormulas";
import { type Replaced, type ReplaceScope, replaceByValues } from "../../../sheet/replaceByValues";
import { Choice } from "../../parts/Choice";
import { HostTrouble } from "../../parts/HostTrouble";
import { functionWords, listed } from "../../words/functions";

const words = functionWords.mend;

type Work =
  | { readonly state: "ready" }
  | { readonly state: "working" }
  | { readonly state: "done"; readonly told: readonly string[] }
  | { readonly state: "failed"; readonly error: unknown };

/** Formulas the program does not know are written anew; and before sharing, our formulas become values. */
export function RepairAndShare({ onDeed }: { readonly onDeed: (deed: Deed) => void }) {
  const [scope, setScope] = useState<ReplaceScope>("workbook");
  const [work, setWork] = useState<Work>({ state: "ready" });

  async function carryOut<Done extends { readonly count: number; readonly deed: Deed }>(
    action: () => Promise<Done>,
    tell: (done: Done) => string[],
  ) {
    setWork({ state: "working" });
    try {
      const done = await action();
      if (done.count > 0) onDeed(done.deed);
      setWork({ state: "done", told: tell(done) });
    } catch (error) {
      setWork({ state: "failed", error });
    }
  }

  const isWorking = work.state === "working";
  return (
    <section className="card" aria-labelledby="mend-title">
      <h2 id="mend-title">{words.title}</h2>
      <p>{words.repairText}</p>
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={() => carryOut(repairFormulas, tellRepaired)}
      >
        {words.repair}
      </button>
      <p className="function-share">{words.shareText}</p>
      <Choice
        label={words.scope}
        value={scope}
        options={Object.entries(words.scopes) as [ReplaceScope, string][]}
        onChange={setScope}
      />
      <button
        type="button"
        className="button"
        disabled={isWorking}
        onClick={() => carryOut(() => replaceByValues(scope), tellReplaced)}
      >
        {words.replace}
      </button>
      <div role="status">
        {isWorking && <p className="quiet">{words.working}</p>}
        {work.state === "done" && work.told.map((sentence) => <p key={sentence}>{sentence}</p>)}
      </div>
      {work.state === "failed" && <HostTrouble error={work.error} />}
    </section>
  );
}

const tellRepaired = ({ count, cells, still }: Repaired): string[] => [
  count === 0 ? words.nothingToRepair : words.repaired(count, listed(cells)),
  ...(still.length > 0 ? [words.still(listed(still))] : []),
];

function tellReplaced({ count, cells, errors }: Replaced): string[] {
  const at = (formulaLeft: boolean) =>
    errors.filter((error) => error.formulaLeft === formulaLeft).map(({ cell, error }) => `${cell} (${error})`);
  const [left, written] = [at(true), at(false)];
  return [
    count === 0 ? words.nothingToReplace : words.replaced(count, listed(cells)),
    ...(left.length > 0 ? [words.left(listed(left))] : []),
    ...(written.length > 0 ? [words.errorsWritten(listed(written))] : []),
  ];
}
