import { HostRefusal } from "../../sheet/hostRefusal";
import { words } from "../words";
import { Message } from "./Message";

/** The workbook refused something: what is in the way, in a coach's words. Errors that are ours go to the error edge. */
export function HostTrouble({ error, again }: { readonly error: unknown; readonly again?: () => void }) {
  if (!(error instanceof HostRefusal)) throw error;
  return (
    <Message tone="trouble" title={words.hostRefusal.title}>
      <p>{explain(error)}</p>
      {again && (
        <button type="button" className="link" onClick={again}>
          {words.hostRefusal.again}
        </button>
      )}
    </Message>
  );
}

/** Codes as Microsoft's page on error handling lists them. */
function explain({ code, message }: HostRefusal): string {
  switch (code) {
    case "InvalidOperationInCellEditMode":
      return words.hostRefusal.busy;
    case "AccessDenied":
      return words.hostRefusal.protectedSheet;
    case "RequestPayloadSizeLimitExceeded":
    case "ResponsePayloadSizeLimitExceeded":
      return words.hostRefusal.tooLarge;
    default:
      return words.hostRefusal.other(message);
  }
}
