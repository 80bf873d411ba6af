import { ColorKit } from "@univerjs/core";
import { refuse } from "../errors";

/** A colour as the API takes it: "#FFA500" or one of the names of HTML. */
export function namedColour(colour: unknown): string {
  if (typeof colour !== "string") return refuse("InvalidArgument", "A colour is text.");
  if (/^#?[0-9a-f]{6}$/i.test(colour)) return `#${colour.replace("#", "").toUpperCase()}`;
  const kit = new ColorKit(colour);
  return kit.isValid
    ? kit.toHexString().slice(0, 7).toUpperCase()
    : refuse("InvalidArgument", `"${colour}" is no colour.`);
}
