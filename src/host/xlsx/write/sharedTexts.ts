import { main, part, tag, textTag } from "./markup";

/** The texts of all cells, each once. */
export class SharedTexts {
  readonly #places = new Map<string, number>();
  #uses = 0;

  place(text: string): number {
    this.#uses += 1;
    const known = this.#places.get(text);
    if (known !== undefined) return known;
    this.#places.set(text, this.#places.size);
    return this.#places.size - 1;
  }

  part(): Uint8Array {
    const texts = [...this.#places.keys()].map((text) => tag("si", {}, textTag("t", text)));
    return part(tag("sst", { xmlns: main, count: this.#uses, uniqueCount: this.#places.size }, texts));
  }
}
