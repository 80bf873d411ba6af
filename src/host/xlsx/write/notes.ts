import type { ISheetNote } from "@univerjs/sheets-note";
import { cellAddress } from "../addresses";
import { main, part, tag, textTag } from "./markup";

/** The notes of one sheet. */
export function notesPart(notes: readonly ISheetNote[]): Uint8Array {
  const list = notes.map(({ row, col, note }) =>
    tag("comment", { ref: cellAddress(row, col), authorId: 0 }, tag("text", {}, tag("r", {}, textTag("t", note)))),
  );
  return part(tag("comments", { xmlns: main }, [tag("authors", {}, tag("author")), tag("commentList", {}, list)]));
}

/** The boxes in which the notes appear: the format still asks for them in a drawing language of its youth. */
export function noteBoxesPart(notes: readonly ISheetNote[]): Uint8Array {
  const boxes = notes.map(({ row, col, width, height }, index) =>
    tag(
      "v:shape",
      {
        id: `_x0000_s${1025 + index}`,
        type: "#_x0000_t202",
        style: `position:absolute;margin-left:60pt;margin-top:2pt;width:${Math.round(width * 0.75)}pt;height:${Math.round(height * 0.75)}pt;z-index:${index + 1};visibility:hidden`,
        fillcolor: "#fbf6e3",
        "o:insetmode": "auto",
      },
      [
        tag("v:fill", { color2: "#fbf6e3" }),
        tag("v:shadow", { on: "t", color: "black", obscured: "t" }),
        tag("v:path", { "o:connecttype": "none" }),
        tag("v:textbox", { style: "mso-direction-alt:auto" }, '<div style="text-align:left"></div>'),
        tag("x:ClientData", { ObjectType: "Note" }, [
          tag("x:MoveWithCells"),
          tag("x:SizeWithCells"),
          tag("x:AutoFill", {}, "False"),
          tag("x:Row", {}, String(row)),
          tag("x:Column", {}, String(col)),
        ]),
      ],
    ),
  );
  return new TextEncoder().encode(
    tag(
      "xml",
      {
        "xmlns:v": "urn:schemas-microsoft-com:vml",
        "xmlns:o": "urn:schemas-microsoft-com:office:office",
        "xmlns:x": "urn:schemas-microsoft-com:office:excel",
      },
      [
        tag("o:shapelayout", { "v:ext": "edit" }, tag("o:idmap", { "v:ext": "edit", data: 1 })),
        tag(
          "v:shapetype",
          { id: "_x0000_t202", coordsize: "21600,21600", "o:spt": 202, path: "m,l,21600r21600,l21600,xe" },
          [tag("v:stroke", { joinstyle: "miter" }), tag("v:path", { gradientshapeok: "t", "o:connecttype": "rect" })],
        ),
        ...boxes,
      ],
    ),
  );
}
