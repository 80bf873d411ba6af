import { type UnknownTest, unknownTests } from "../../analyses/unknownTests";
import type { ColumnMap, NamedTest } from "../../reading/columns";
import { seriesName } from "../../reading/measures";
import type { Reading } from "../../reading/readResults";
import { memberCalled } from "../../store/background";
import { Message } from "../parts/Message";
import { notSetUpWords as words } from "../words/notSetUp";
import { useWorkbook } from "../workbook";

/** How cells are read, and the means to correct it. */
type Correction = { readonly map: ColumnMap; readonly setMap: (map: ColumnMap) => void };

/**
 * Athletes who are not in the squad and tests that are not in the battery: used all the same, but told; and a test that
 * the battery knows by another name can be read as that.
 */
export function NotSetUp(props: {
  readonly reading: Reading;
  /** Null where the results are not read from cells that the coach has selected. */
  readonly correction: Correction | null;
}) {
  const { reading, correction } = props;
  const { background } = useWorkbook();
  const strangers =
    background.squad.length === 0
      ? []
      : reading.athletes.filter((athlete) => memberCalled(background, athlete) === null);
  const tests = unknownTests(reading, background);
  const corrected = Object.entries(correction?.map.sameTest ?? {});
  if (strangers.length + tests.length + corrected.length === 0) return null;
  return (
    <Message tone="plain" title={words.title}>
      {strangers.length > 0 && <p>{words.athletes(strangers)}</p>}
      {tests.length + corrected.length > 0 && (
        <ul>
          {tests.map((unknown) => (
            <li key={unknown.name}>
              {words.test(unknown.name)} <Likely unknown={unknown} correction={correction} />
            </li>
          ))}
          {correction !== null &&
            corrected.map(([name, as]) => <Corrected key={name} name={name} as={as} correction={correction} />)}
        </ul>
      )}
    </Message>
  );
}

/** The test it may be, where the battery has one. */
function Likely(props: { readonly unknown: UnknownTest; readonly correction: Correction | null }) {
  const { unknown, correction } = props;
  const [near] = unknown.near;
  if (!near) return null;
  if (correction === null) return words.mayBe(near.test);
  const { map, setMap } = correction;
  const as: NamedTest = { test: near.test, measure: near.measure ?? unknown.measure };
  return (
    <button
      type="button"
      className="link"
      onClick={() => setMap({ ...map, sameTest: { ...map.sameTest, [unknown.name]: as } })}
    >
      {words.readAs(seriesName(as.test, as.measure))}
    </button>
  );
}

function Corrected(props: { readonly name: string; readonly as: NamedTest; readonly correction: Correction }) {
  const { name, as, correction } = props;
  const { map, setMap } = correction;
  const part = () => {
    const { [name]: _, ...sameTest } = map.sameTest;
    setMap({ ...map, sameTest });
  };
  return (
    <li>
      {words.isReadAs(name, seriesName(as.test, as.measure))}{" "}
      <button type="button" className="link" onClick={part}>
        {words.readAsItStands}
      </button>
    </li>
  );
}
