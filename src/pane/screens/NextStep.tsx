import type { Screen } from "../screen";
import { words } from "../words";
import type { WorkbookState } from "../workbook";

/** Where the workbook stands in the cycle, in a sentence, and the one thing to do next. */
export function NextStep(props: { readonly workbook: WorkbookState; readonly go: (screen: Screen) => void }) {
  const { workbook, go } = props;
  if (workbook.state !== "read") return null;
  const { text, press, screen } = nextStep(workbook);
  return (
    <section className="next-step" aria-label={words.next.label}>
      <p>{text}</p>
      <button type="button" className="button" onClick={() => go(screen)}>
        {press}
      </button>
    </section>
  );
}

type Step = { readonly text: string; readonly press: string; readonly screen: Screen };

function nextStep({ present, background }: WorkbookState): Step {
  const { squad, battery } = background;
  if (!present.has("squad") || !present.has("battery")) return { ...words.next.setUp, screen: { kind: "setUp" } };
  if (squad.length === 0 || battery.length === 0) return { ...words.next.fill, screen: { kind: "setUp" } };
  return { ...words.next.testDay(squad.length, battery.length), screen: { kind: "testDay" } };
}
