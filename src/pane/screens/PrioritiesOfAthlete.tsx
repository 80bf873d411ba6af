import { useState } from "react";
import type { AskedStanding } from "../../programme/demands";
import { type Ratio, ratioSentence } from "../../programme/ratios";
import {
  type Decision,
  isSetAside,
  type Overruling,
  overruled,
  type PriorityRow,
  setAside,
} from "../../store/priorityTable";
import { Disclosure } from "../parts/Disclosure";
import { WhatIsThis } from "../parts/WhatIsThis";
import { AthleteDemands } from "../pictures/Demands";
import { priorityWords as words } from "../words/priorities";
import "./priorities.css";

/** One athlete's priorities, each to be overruled with one press, and the numbers they come from. */
export function PrioritiesOfAthlete(props: {
  readonly athlete: string;
  /** As they stand in the workbook; as proposed where none do. */
  readonly rows: readonly PriorityRow[];
  readonly qualities: readonly string[];
  readonly asked: readonly AskedStanding[];
  readonly ratios: readonly Ratio[];
  readonly busy: boolean;
  readonly onDecide: (decisions: readonly Decision[]) => void;
}) {
  const { athlete, qualities, asked, ratios, busy, onDecide } = props;
  const [isOpen, setOpen] = useState(false);
  const rows = [...props.rows].sort((a, b) => a.rank - b.rank);
  return (
    <div>
      <dt>{athlete}</dt>
      <dd>
        <ol>
          {rows.map((row, index) => (
            <OnePriority
              key={row.rank}
              row={row}
              place={{ isFirst: index === 0, isLast: index === rows.length - 1 }}
              qualities={qualities}
              busy={busy}
              onOverrule={(overruling) => onDecide(overruled(rows, row.rank, overruling, row.reason))}
              onReason={(reason) => onDecide([{ ...row, reason }])}
            />
          ))}
        </ol>
        <Disclosure title={words.profile} open={isOpen} onOpenChange={setOpen}>
          {asked.length > 0 && <AthleteDemands athlete={athlete} asked={asked} />}
          {ratios.length === 0 ? (
            <p className="quiet">{words.noRatios}</p>
          ) : (
            <ul className="ratios">
              {ratios.map((ratio) => (
                <li key={ratio.name}>
                  {ratioSentence(ratio)} <WhatIsThis about={ratio.name}>{ratio.meaning}</WhatIsThis>
                </li>
              ))}
            </ul>
          )}
        </Disclosure>
      </dd>
    </div>
  );
}

function OnePriority(props: {
  readonly row: PriorityRow;
  readonly place: { readonly isFirst: boolean; readonly isLast: boolean };
  readonly qualities: readonly string[];
  readonly busy: boolean;
  readonly onOverrule: (overruling: Overruling) => void;
  readonly onReason: (reason: string | null) => void;
}) {
  const { row, place, qualities, busy, onOverrule, onReason } = props;
  const { athlete, quality, choice, why } = row;
  const worked = choice === null || isSetAside(row) ? quality : choice;
  return (
    <li value={row.rank}>
      {choice === null ? (
        <>
          <strong>{quality}</strong> <span className="quiet">{why}</span>
        </>
      ) : isSetAside(row) ? (
        <>
          <s>{quality}</s> <span className="quiet">{words.wasSetAside}</span>
        </>
      ) : (
        <>
          <strong>{choice}</strong> <span className="quiet">{words.insteadOf(quality)}</span>
        </>
      )}
      <span className="overrule">
        <Step
          label={words.earlier(worked)}
          mark="↑"
          isOff={busy || place.isFirst}
          go={() => onOverrule({ kind: "earlier" })}
        />
        <Step
          label={words.later(worked)}
          mark="↓"
          isOff={busy || place.isLast}
          go={() => onOverrule({ kind: "later" })}
        />
        <select
          aria-label={words.decide(quality, athlete)}
          value={choice !== null && isSetAside(row) ? setAside : (choice ?? asProposed)}
          disabled={busy}
          onChange={(event) => onOverrule(overrulingBy(event.target.value))}
        >
          <option value={asProposed}>{words.asProposed}</option>
          <option value={setAside}>{words.setAside}</option>
          {[...new Set([...qualities, ...(choice === null || isSetAside(row) ? [] : [choice])])]
            .filter((one) => one !== quality)
            .map((one) => (
              <option key={one} value={one}>
                {words.instead(one)}
              </option>
            ))}
        </select>
      </span>
      {choice !== null && <Reason row={row} busy={busy} onReason={onReason} />}
    </li>
  );
}

const asProposed = "";

function overrulingBy(chosen: string): Overruling {
  if (chosen === asProposed) return { kind: "asProposed" };
  return chosen === setAside ? { kind: "aside" } : { kind: "instead", quality: chosen };
}

function Step(props: {
  readonly label: string;
  readonly mark: string;
  readonly isOff: boolean;
  readonly go: () => void;
}) {
  return (
    <button type="button" className="step" aria-label={props.label} disabled={props.isOff} onClick={props.go}>
      {props.mark}
    </button>
  );
}

/** Written when the coach leaves the field, or presses Enter. */
function Reason(props: {
  readonly row: PriorityRow;
  readonly busy: boolean;
  readonly onReason: (reason: string | null) => void;
}) {
  const { row, onReason } = props;
  const [typed, setTyped] = useState(row.reason ?? "");
  const keep = () => {
    const reason = typed.trim() === "" ? null : typed.trim();
    if (reason !== row.reason) onReason(reason);
  };
  return (
    <input
      className="reason"
      aria-label={words.reasonFor(row.quality, row.athlete)}
      placeholder={words.reason}
      value={typed}
      disabled={props.busy}
      onChange={(event) => setTyped(event.target.value)}
      onBlur={keep}
      onKeyDown={(event) => {
        if (event.key === "Enter") keep();
      }}
    />
  );
}
