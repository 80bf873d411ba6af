import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { FunctionsScreen } from "./functions/FunctionsScreen";

/** The functions for a coach's own formulas. */
export default function FunctionsPage(props: {
  /** What is looked for among them from the start. */
  readonly wished?: string | undefined;
  readonly go: (screen: Screen) => void;
}) {
  const { wished, go } = props;
  const { remember } = useWorkbook();
  return (
    <Page title={words.tasks.functions.title} text={words.tasks.functions.question} go={go}>
      <FunctionsScreen wished={wished} onDeed={remember} />
    </Page>
  );
}
