import { identityByPlace, isIdentity } from "../../engine/identity";
import type { KnownIdentities } from "../hostState";

/**
 * Gives the sheets and tables of a file their ids: their own in the file; where another program has dropped it, the
 * one remembered under their name; else one by their place.
 */
export class Identities {
  readonly #known: KnownIdentities;
  readonly #given = new Set<string>();

  constructor(known: KnownIdentities) {
    this.#known = known;
  }

  /** `own` is the id the file gives. Two of one id happen where a program copies a part: the second gets another. */
  of(kind: keyof KnownIdentities, own: string | undefined, name: string): string {
    const remembered = this.#known[kind][name];
    const id =
      [isIdentity(own) ? own : undefined, remembered].find((each) => each !== undefined && !this.#given.has(each)) ??
      this.#byPlace(kind);
    this.#given.add(id);
    return id;
  }

  #byPlace(kind: keyof KnownIdentities): string {
    const remembered = new Set(Object.values(this.#known[kind]));
    for (let place = 0; ; place += 1) {
      const id = identityByPlace(kind, place);
      if (!this.#given.has(id) && !remembered.has(id)) return id;
    }
  }
}
