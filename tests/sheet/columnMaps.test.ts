import type { Host } from "../../src/host";
import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { recallColumnMap, rememberColumnMap } from "../../src/sheet/columnMaps";
import { columnMapsSetting } from "../../src/store/columnMaps";
import { gridOf } from "../reading/gridOf";
import { openWorkbook } from "./openWorkbook";

let host: Host;
beforeEach(() => {
  host = openWorkbook();
});
afterEach(() => host.dispose());

const map = recogniseColumns(
  gridOf([
    ["Athlete", "Left (cm)", "Right (cm)"],
    ["A", 150, 152],
  ]),
);
const headings = map.columns.map(({ heading }) => heading);

const setting = () =>
  Excel.run(async (context) => {
    const item = context.workbook.settings.getItemOrNullObject(columnMapsSetting);
    item.load("value");
    await context.sync();
    return item.isNullObject ? undefined : item.value;
  });

const setSetting = (value: unknown) =>
  Excel.run(async (context) => {
    context.workbook.settings.add(columnMapsSetting, value);
    await context.sync();
  });

/** How often the workbook is asked while something is done. */
async function roundTrips(action: () => Promise<unknown>): Promise<number> {
  const before = host.syncs;
  await action();
  return host.syncs - before;
}

it("recalls what was remembered, while the headings are the same", async () => {
  expect(await recallColumnMap("s1!A3", headings)).toBeNull();
  await rememberColumnMap("s1!A3", headings, map);
  expect(await recallColumnMap("s1!A3", headings)).toEqual(map);
  expect(await recallColumnMap("s1!A3", ["Athlete", "Left (cm)", "Right (m)"])).toBeNull();
  expect(await recallColumnMap("s2!A3", headings)).toBeNull();
});

it("leaves alone what a newer version has written", async () => {
  const newer = { version: 2, maps: "otherwise" };
  await setSetting(newer);
  await rememberColumnMap("s1!A3", headings, map);
  expect(await recallColumnMap("s1!A3", headings)).toBeNull();
  expect(await setting()).toEqual(newer);
});

it("asks the workbook once to recall and twice to remember, however much is remembered", async () => {
  await rememberColumnMap("s1!A3", headings, map);
  await rememberColumnMap("s1!A9", headings, map);
  expect(await roundTrips(() => recallColumnMap("s1!A3", headings))).toBe(1);
  expect(await roundTrips(() => rememberColumnMap("s1!A3", headings, map))).toBe(2);
});
