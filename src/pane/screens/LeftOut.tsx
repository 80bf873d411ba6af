import type { CellRemark } from "../../analyses/analysis";
import { CellButton } from "../parts/CellButton";
import { priorityWords } from "../words/priorities";

const words = priorityWords.leftOut;
const shownAtFirst = 4;

/** Kept results that nobody can have, each with its cell and the reason. */
export function LeftOut({ leftOut }: { readonly leftOut: readonly CellRemark[] }) {
  if (leftOut.length === 0) return null;
  return (
    <section className="card" aria-labelledby="left-out-title">
      <h2 id="left-out-title">{words.title(leftOut.length)}</h2>
      <ul className="remarks">
        {leftOut.slice(0, shownAtFirst).map(({ cell, why }) => {
          const end = cell.lastIndexOf("!");
          const sheet = cell
            .slice(0, end)
            .replace(/^'(.*)'$/, "$1")
            .replace(/''/g, "'");
          return (
            <li key={cell}>
              <span className="cells">
                <CellButton sheet={sheet} cell={cell.slice(end + 1)} />
              </span>
              <span>{why}</span>
            </li>
          );
        })}
      </ul>
      {leftOut.length > shownAtFirst && <p className="quiet">{words.more(leftOut.length - shownAtFirst)}</p>}
    </section>
  );
}
