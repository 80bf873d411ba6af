import { block } from "../../sample-workbooks/block";
import { diary } from "../../sample-workbooks/diary";
import { dayTotals } from "../../src/engine/load/dayTotals";
import { sessionLoad } from "../../src/engine/load/sessionLoad";
import { weekSummary } from "../../src/engine/load/weekSummary";
import { unwrap } from "../../src/engine/result";

const serial = (date: number): number => Math.round(date / 86_400_000);

/** An athlete's load of each week of the block, from Monday; days without a row are rest, unrated sessions are left out. */
export function loadsByWeek(athlete: string): number[] {
  const firstDay = serial(Date.parse(block.firstDay));
  const entries = diary()
    .filter((row) => row.athlete === athlete && row.rating !== null)
    .map(({ date, rating, minutes }) => ({
      day: serial(date.getTime()),
      load: unwrap(sessionLoad(rating!, minutes)),
    }));
  const lastDay = firstDay + 7 * block.weeks - 1;
  const totals = unwrap(dayTotals(entries, { firstDay, lastDay, unreported: "rest" }));
  return Array.from(
    { length: block.weeks },
    (_, week) => unwrap(weekSummary(totals.slice(7 * week, 7 * week + 7))).total,
  );
}
