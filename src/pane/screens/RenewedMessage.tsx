import { goTo } from "../../sheet/goTo";
import type { Renewed } from "../../sheet/renewPlanned";
import { HostTrouble } from "../parts/HostTrouble";
import { Message } from "../parts/Message";
import type { Doing } from "../useDeed";
import { words } from "../words";

/** What came of writing priorities or a plan: how much stands, what stayed the coach's, or what was in the way. */
export function RenewedMessage(props: {
  readonly writing: Doing<Renewed>;
  readonly next: { readonly label: string; readonly go: () => void };
}) {
  const { writing, next } = props;
  if (writing.error !== null) return <HostTrouble error={writing.error} />;
  if (writing.outcome === null) return null;
  const { sheet, written, coachs, inTheWay } = writing.outcome;
  if (inTheWay) {
    return (
      <Message tone="trouble" title={words.programme.notWritten}>
        <p>{inTheWay.why}</p>
      </Message>
    );
  }
  return (
    <Message tone="good" title={words.programme.written(sheet, written)}>
      {coachs > 0 && <p>{words.programme.coachs(coachs)}</p>}
      <button type="button" className="link" onClick={() => void goTo(sheet, "A1")}>
        {words.write.show}
      </button>{" "}
      <button type="button" className="link" onClick={next.go}>
        {next.label}
      </button>
    </Message>
  );
}
