import { type UnzipFileInfo, unzipSync, zipSync } from "fflate";
import { XlsxRefusal } from "../refusal";

/** The files inside an .xlsx, by their path without a leading slash. */
export type Parts = { readonly [path: string]: Uint8Array };

const megabyte = 1024 * 1024;
/** Far beyond any squad's workbook, far below what harms a browser tab. */
export const limits = { file: 60 * megabyte, unpacked: 400 * megabyte, parts: 5000 } as const;

/** Unpacks an .xlsx, refusing what is none and what would burst: sizes are checked before anything is unpacked. */
export function unpack(bytes: Uint8Array): Parts {
  refuseOtherFormats(bytes);
  if (bytes.length > limits.file) {
    throw new XlsxRefusal(`This file is larger than ${limits.file / megabyte} MB. Split it into smaller workbooks.`);
  }
  let announced = 0;
  let count = 0;
  const admit = ({ originalSize, name }: UnzipFileInfo) => {
    announced += originalSize;
    count += 1;
    if (announced > limits.unpacked || count > limits.parts) {
      throw new XlsxRefusal(
        "This file unpacks to far more than a workbook holds, as harmful files do. It was not opened.",
      );
    }
    return !name.endsWith("/");
  };
  try {
    // The announced size also bounds the unpacking itself: a part that holds more than it announces does not get more.
    const parts = unzipSync(bytes, { filter: admit });
    return Object.fromEntries(Object.entries(parts).map(([path, content]) => [path.replace(/^\/+/, ""), content]));
  } catch (error) {
    if (error instanceof XlsxRefusal) throw error;
    throw new XlsxRefusal(
      "This file is damaged: it does not unpack. Open and save it in your spreadsheet program, then try again.",
    );
  }
}

/** The bytes of an .xlsx made of these parts; the same for the same parts. */
export const pack = (parts: Parts): Uint8Array => zipSync({ ...parts }, { level: 6, mtime: new Date(1980, 0, 1) });

function refuseOtherFormats(bytes: Uint8Array): void {
  const start = [...bytes.subarray(0, 4)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  if (start === "d0cf11e0") {
    throw new XlsxRefusal(
      "This is an older .xls workbook, or one locked with a password. Save it as .xlsx without a password, then open that.",
    );
  }
  if (start !== "504b0304") {
    throw new XlsxRefusal(
      "This is not an .xlsx workbook. In your spreadsheet program, choose Save as and the type .xlsx.",
    );
  }
}
