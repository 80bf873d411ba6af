/** A file that cannot or must not be opened; the message says why and what to do, in a coach's words. */
export class XlsxRefusal extends Error {
  override readonly name = "XlsxRefusal";
}
