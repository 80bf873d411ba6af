import { Page } from "../parts/Page";
import type { Screen } from "../screen";
import { words } from "../words";
import { useWorkbook } from "../workbook";
import { FunctionsScreen } from "./functions/FunctionsScreen";

/** The functions for a coach's own formulas. */
export default function FunctionsPage({ go }: { readonly go: (screen: Screen) => void }) {
  const { remember } = useWorkbook();
  return (
    <Page title={words.tasks.functions.title} text={words.tasks.functions.question} go={go}>
      <FunctionsScreen onDeed={remember} />
    </Page>
  );
}
