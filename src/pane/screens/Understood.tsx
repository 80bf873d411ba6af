import { type ReactNode, useState } from "react";
import { gridAddress } from "../../reading/address";
import { type ColumnUse, layoutOf, unitOfResults, unitsOfResults, withUnit, withUse } from "../../reading/columns";
import type { Reading } from "../../reading/readResults";
import { units } from "../../reading/units";
import { Choice } from "../parts/Choice";
import { Disclosure } from "../parts/Disclosure";
import { Tick } from "../parts/Tick";
import type { Columns } from "../useColumns";
import { words } from "../words";

/** What the pane took the selection for, and the means to correct it. */
export function Understood(props: {
  /** Whether the columns suffice for what is asked; else the pickers are open. */
  readonly isClear: boolean;
  readonly columns: Columns;
  readonly reading: Reading;
  readonly grownFrom: string | null;
  /** What else is to be chosen about the source. */
  readonly children?: ReactNode;
}) {
  const { isClear, columns, reading, grownFrom } = props;
  const { grid, map } = columns;
  const [opened, setOpened] = useState(false);
  const inUnits = unitsOfResults(map);
  const unit = inUnits.length === 0 ? words.source.noUnit : words.source.inUnit(inUnits.join(", "));
  const counts = [reading.athletes.length, reading.results.length, unit] as const;
  return (
    <section className="card" aria-labelledby="source-title">
      <h2 id="source-title">{words.source.title}</h2>
      <p>
        <span className="address">{gridAddress(grid)}</span>
        {grownFrom && <span className="quiet"> {words.source.grown(grownFrom)}</span>}
      </p>
      <p>{isClear ? words.source[layoutOf(map)](...counts) : words.source.unclear}</p>
      {isClear && <UsedColumns columns={columns} />}
      {props.children}
      {grid.hiddenRows.length > 0 && <HiddenRows count={grid.hiddenRows.length} columns={columns} />}
      <Disclosure title={words.source.change} open={opened || !isClear} onOpenChange={setOpened}>
        <ColumnPickers columns={columns} />
      </Disclosure>
    </section>
  );
}

function UsedColumns({ columns: { map } }: { readonly columns: Columns }) {
  const { columns } = map;
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

function ColumnPickers({ columns: { map, setMap } }: { readonly columns: Columns }) {
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

function HiddenRows({ count, columns: { map, setMap } }: { readonly count: number; readonly columns: Columns }) {
  return (
    <Tick checked={map.includeHiddenRows} onChange={(includeHiddenRows) => setMap({ ...map, includeHiddenRows })}>
      {words.columns.hidden(count)}
    </Tick>
  );
}
