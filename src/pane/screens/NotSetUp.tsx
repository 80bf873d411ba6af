import { unknownTests } from "../../analyses/unknownTests";
import type { ColumnMap } from "../../reading/columns";
import type { Reading } from "../../reading/readResults";
import { memberCalled } from "../../store/background";
import type { BatteryTest } from "../../store/battery";
import { Message } from "../parts/Message";
import { words } from "../words";
import { useWorkbook } from "../workbook";

/** Athletes who are not in the squad and tests that are not in the battery: kept all the same, but told. */
export function NotSetUp(props: {
  readonly reading: Reading;
  readonly map: ColumnMap;
  readonly setMap: (map: ColumnMap) => void;
}) {
  const { reading, map, setMap } = props;
  const { background } = useWorkbook();
  const strangers =
    background.squad.length === 0
      ? []
      : reading.athletes.filter((athlete) => memberCalled(background, athlete) === null);
  const tests = unknownTests(reading, background);
  if (strangers.length === 0 && tests.length === 0) return null;
  const inColumns = (test: string) => map.columns.some((column) => column.test === test);
  const readAs = (test: string, row: BatteryTest) =>
    setMap({
      ...map,
      columns: map.columns.map((column) =>
        column.test === test ? { ...column, test: row.test, measure: row.measure ?? column.measure } : column,
      ),
    });
  return (
    <Message tone="plain" title={words.notSetUp.title}>
      {strangers.length > 0 && <p>{words.notSetUp.athletes(strangers)}</p>}
      {tests.length > 0 && (
        <ul>
          {tests.map(({ name, test, near }) => (
            <li key={name}>
              {words.notSetUp.test(name)}{" "}
              {near[0] && inColumns(test) && (
                <button type="button" className="link" onClick={() => readAs(test, near[0]!)}>
                  {words.notSetUp.readAs(near[0].test)}
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
    </Message>
  );
}
