import type { ClientObject } from "./clientObject";

export type Unsubscribe = () => void;

/** Where the events of a member come from: begins to listen and answers how to stop. */
export type EventSource<Target, Arguments> = (target: Target, tell: (args: Arguments) => void) => Unsubscribe;

type Handler = (args: unknown) => unknown;

/** `OfficeExtension.EventHandlers`: handlers are added and removed at sync, as everything else. */
export class EventHandlers {
  readonly #owner: ClientObject;
  readonly #name: string;
  readonly #source: EventSource<unknown, unknown>;
  readonly #active = new Map<Handler, Unsubscribe>();

  constructor(owner: ClientObject, name: string, source: EventSource<unknown, unknown>) {
    this.#owner = owner;
    this.#name = name;
    this.#source = source;
  }

  add(handler: Handler) {
    const { context, $members: members } = this.#owner;
    context.enqueue(`${members.name}.${this.#name}.add`, () => {
      members.check(context, this.#name);
      // A handler runs after the change and on its own: what it throws is its own matter, as in Excel.
      const tell = (args: unknown) => queueMicrotask(() => void handler(args));
      this.#active.set(handler, this.#source(this.#owner.$target(), tell));
    });
    return { context, remove: () => this.remove(handler) };
  }

  remove(handler: Handler): void {
    const { context, $members: members } = this.#owner;
    context.enqueue(`${members.name}.${this.#name}.remove`, () => {
      this.#active.get(handler)?.();
      this.#active.delete(handler);
    });
  }
}
