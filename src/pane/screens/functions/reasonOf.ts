import { answerOf } from "../../../functions/answerOf";
import type { ActiveCall } from "../../../sheet/readActiveCall";
import { functionWords } from "../../words/functions";

const { meanings, otherError, notRead, elsewhere } = functionWords.cell;

/**
 * Why the cell shows its error, in sentences. For the errors our functions give on purpose the call is answered once
 * more from the same cells, by the same code; where it cannot be, what such an error means.
 */
export async function reasonOf({ id, arguments: given, offset, error }: ActiveCall): Promise<readonly string[]> {
  if (error === null) return [];
  const meaning = meanings[error] ?? otherError;
  if (error !== "#N/A" && error !== "#VALUE!") return [meaning];
  const unread = given.filter(({ cells }) => cells === null).map(({ text }) => text);
  if (unread.length > 0) return [notRead(unread), meaning];
  const answer = await answerOf(
    id,
    given.map(({ cells }) => cells!),
  );
  const cell = answer[offset.row]?.[offset.column] ?? answer[0]?.[0];
  if (typeof cell !== "object") return [elsewhere];
  return [cell.why || meaning];
}
