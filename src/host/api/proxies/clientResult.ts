import { ApiError } from "../errors";

/** `OfficeExtension.ClientResult`: a plain value that is there after the next sync. */
export class ClientResult<Value = unknown> {
  #arrived: { readonly value: Value } | undefined;

  /** @internal */
  arrive(value: Value): void {
    this.#arrived = { value };
  }

  get value(): Value {
    if (!this.#arrived) throw new ApiError("ValueNotLoaded");
    return this.#arrived.value;
  }
}
