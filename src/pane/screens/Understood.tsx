import { useId, useState } from "react";
import type { AnyAnalysis } from "../../analyses/analysis";
import { gridAddress } from "../../reading/address";
import { type ColumnUse, layoutOf, unitOfResults, unitsOfResults, withUnit, withUse } from "../../reading/columns";
import type { Grid } from "../../reading/grid";
import { units } from "../../reading/units";
import { Choice } from "../parts/Choice";
import { Disclosure } from "../parts/Disclosure";
import type { Question } from "../useQuestion";
import { words } from "../words";

/** What the pane took the selection for, and the means to correct it. */
export function Understood(props: {
  readonly analysis: AnyAnalysis;
  readonly grid: Grid;
  readonly grownFrom: string | null;
  readonly question: Question;
}) {
  const { analysis, grid, grownFrom, question } = props;
  const { map, reading } = question;
  const { report } = question;
  const isClear = report.ok || report.reasons.every((reason) => reason.code !== "missingColumns");
  const [opened, setOpened] = useState(false);
  const units = unitsOfResults(map);
  const unit = units.length === 0 ? words.source.noUnit : words.source.inUnit(units.join(", "));
  const counts = [reading.athletes.length, reading.results.length, unit] as const;
  return (
    <section className="card" aria-labelledby="source-title">
      <h2 id="source-title">{words.source.title}</h2>
      <p>
        <span className="address">{gridAddress(grid)}</span>
        {grownFrom && <span className="quiet"> {words.source.grown(grownFrom)}</span>}
      </p>
      <p>{isClear ? words.source[layoutOf(map)](...counts) : words.source.unclear}</p>
      {isClear && <UsedColumns question={question} />}
      {analysis.tests === "one" && reading.tests.length > 1 && (
        <Choice
          label={words.columns.test}
          value={question.test}
          options={reading.tests.map((test) => [test, test || words.columns.unnamedTest] as const)}
          onChange={question.setTest}
        />
      )}
      {grid.hiddenRows.length > 0 && <HiddenRows count={grid.hiddenRows.length} question={question} />}
      <Disclosure title={words.source.change} open={opened || !isClear} onOpenChange={setOpened}>
        <ColumnPickers question={question} />
      </Disclosure>
    </section>
  );
}

function UsedColumns({ question }: { readonly question: Question }) {
  const { columns } = question.map;
  const uses = (["athlete", "left", "right", "side", "result", "attempt"] as const).filter((use) =>
    columns.some((column) => column.use === use),
  );
  return (
    <ul className="uses">
      {uses.map((use) => (
        <li key={use}>
          {words.source.columnsOf(
            words.columns.uses[use],
            columns.filter((column) => column.use === use).map((column) => column.letters),
          )}
        </li>
      ))}
    </ul>
  );
}

function ColumnPickers({ question }: { readonly question: Question }) {
  const { map, setMap } = question;
  const options = Object.entries(words.columns.uses) as [ColumnUse, string][];
  return (
    <div className="pickers">
      {map.columns.map((column) => (
        <Choice
          key={column.offset}
          label={words.columns.use(column.letters, column.heading)}
          value={column.use}
          options={options}
          onChange={(use) => setMap(withUse(map, column.offset, use))}
        />
      ))}
      <Choice
        label={words.columns.unit}
        value={unitOfResults(map) ?? ""}
        options={[["", words.columns.unitUnknown] as const, ...units.map(({ symbol }) => [symbol, symbol] as const)]}
        onChange={(unit) => setMap(withUnit(map, unit === "" ? null : unit))}
      />
    </div>
  );
}

function HiddenRows({ count, question }: { readonly count: number; readonly question: Question }) {
  const id = useId();
  const { map, setMap } = question;
  return (
    <p className="tick">
      <input
        id={id}
        type="checkbox"
        checked={map.includeHiddenRows}
        onChange={(event) => setMap({ ...map, includeHiddenRows: event.target.checked })}
      />
      <label htmlFor={id}>{words.columns.hidden(count)}</label>
    </p>
  );
}
