import type { Nullable } from "@univerjs/core";

/** A colour of the grid ("#fff", "#0f6b5c", "rgb(15, 107, 92)") as the file wants it: "FF0F6B5C". */
export function fileColour(colour: Nullable<string>): string | undefined {
  if (!colour) return undefined;
  const text = colour.trim();
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(text);
  if (short)
    return `FF${short
      .slice(1)
      .map((digit) => digit + digit)
      .join("")}`.toUpperCase();
  if (/^#[0-9a-f]{6}$/i.test(text)) return `FF${text.slice(1)}`.toUpperCase();
  const parts = /^rgba?\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)/i.exec(text);
  if (!parts) return undefined;
  return `FF${parts
    .slice(1)
    .map((byte) => Number(byte).toString(16).padStart(2, "0"))
    .join("")}`.toUpperCase();
}
