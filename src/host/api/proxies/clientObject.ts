import { ApiError } from "../errors";
import type { LoadTree } from "./loadPaths";
import { loadTree } from "./loadPaths";
import type { AnyMembers } from "./proxyClass";
import type { RequestContext } from "./requestContext";

/** How an object is found: run once, at its place in the queue. `null` says that it does not exist. */
export type Source = () => unknown;

type Place =
  | { readonly state: "pending" }
  | { readonly state: "found"; readonly target: unknown }
  | { readonly state: "absent" }
  | { readonly state: "failed" };

/**
 * What all objects of the API have in common: a place in the workbook found at sync, and loaded properties. The host's
 * own names begin with "$", as a class of the API may have a member of any other name.
 */
export abstract class ClientObject {
  readonly context: RequestContext;
  /** @internal */ readonly $members: AnyMembers;
  #source: Source;
  #place: Place = { state: "pending" };
  #nullKnown = false;
  readonly #loaded = new Map<string, unknown>();
  readonly #children = new Map<string, ClientObject>();

  constructor(context: RequestContext, members: AnyMembers, source: Source) {
    this.context = context;
    this.$members = members;
    this.#source = source;
  }

  /** Finds the object now, at its place in the queue, and keeps what was found. */
  $instantiate(location: string, reads: boolean, bytes: number): void {
    this.context.enqueue(
      location,
      () => {
        const target = this.$find();
        this.#nullKnown = true;
        // An object found by a call brings its id along, which published samples read without loading it.
        const id = this.$members.scalars.id;
        if (id && target !== null) this.#loaded.set("id", id.get(target));
      },
      { reads, bytes },
    );
  }

  /** @internal What the object stands for; `null` where an OrNullObject method found nothing. */
  $find(): unknown {
    if (this.#place.state === "failed") throw new ApiError("InvalidObjectPath");
    if (this.#place.state === "pending") {
      this.#place = { state: "failed" };
      const target = this.#source();
      this.#place = target === null ? { state: "absent" } : { state: "found", target };
    }
    return this.#place.state === "found" ? this.#place.target : null;
  }

  /**
   * @internal Does something to the object where there is one. Published samples delete what may not be there:
   * `worksheets.getItemOrNullObject("Sample").delete()` does nothing without such a sheet.
   */
  $onTarget(deed: (target: unknown) => void | Promise<void>): void | Promise<void> {
    const target = this.$find();
    return target === null ? undefined : deed(target);
  }

  /** @internal The object, which must exist: a null object cannot be handed to another's method. */
  $target(): unknown {
    const found = this.$find();
    if (found === null) throw new ApiError("ItemNotFound");
    return found;
  }

  get isNullObject(): boolean {
    if (!this.#nullKnown) throw this.#notLoaded("isNullObject");
    return this.#place.state === "absent";
  }

  load(option?: unknown): this {
    const tree = loadTree(option);
    this.context.enqueue(`${this.$members.name}.load`, () => this.$read(tree), { reads: true });
    return this;
  }

  /** @internal Reads the asked properties into this object and those below it. */
  $read(tree: LoadTree): void {
    const target = this.$find();
    this.#nullKnown = true;
    if (target === null) return;
    const { scalars, objects, items } = this.$members;
    const asked = Object.keys(tree);
    const itemTree: Record<string, LoadTree> = {};
    let itemsAsked = items !== undefined && asked.length === 0;
    let wholeItems = itemsAsked;
    const all = asked.length === 0 || asked.includes("*");
    // Who asks for the items of a collection is told their count too, as published samples rely on.
    const count = items && scalars.count && asked.includes("items") ? ["count"] : [];
    const named = asked.filter((name) => name !== "*");
    for (const name of [...(all ? this.#plainProperties() : []), ...named, ...count]) {
      const below = tree[name] ?? {};
      if (scalars[name]) {
        this.$members.check(this.context, name);
        this.#keep(name, scalars[name].get(target));
      } else if (objects[name]) {
        this.$child(name).$read(below);
      } else if (items) {
        itemsAsked = true;
        if (name !== "items") itemTree[name] = below;
        else if (Object.keys(below).length === 0) wholeItems = true;
        else Object.assign(itemTree, below);
      } else if (this.$members.isPublished(name)) {
        throw this.$members.unknown(name);
      }
      // A name the API does not have is passed over, as published samples rely on ("NoPropertiesNeeded" among them);
      // who misspells a property is told when reading the right one.
    }
    if (items && itemsAsked) {
      const list = items.list(target).map((item) => {
        const proxy = items.of().create(this.context, () => item);
        if (wholeItems) proxy.$read({});
        if (Object.keys(itemTree).length > 0) proxy.$read(itemTree);
        return proxy;
      });
      this.#loaded.set("items", list);
    }
  }

  /** Names that a load without options asks for. ASSUMPTION: properties newer than the host's sets are left out. */
  #plainProperties(): string[] {
    return Object.keys(this.$members.scalars).filter((name) => this.$members.offered(this.context, name));
  }

  #keep(name: string, value: unknown): void {
    if (Array.isArray(value) || typeof value === "string") this.context.countResponse(sizeOf(value));
    this.#loaded.set(name, value);
  }

  /** @internal A navigation property: the same object each time. */
  $child(name: string): ClientObject {
    let child = this.#children.get(name);
    if (!child) {
      const member = this.$members.objects[name]!;
      child = member.of().create(this.context, () => {
        const target = this.$find();
        return target === null ? null : member.at(target);
      });
      this.#children.set(name, child);
    }
    return child;
  }

  /** @internal */
  $get(name: string): unknown {
    if (this.#loaded.has(name)) return this.#loaded.get(name);
    // A null object has no properties to wait for: reading one gives undefined, as the platform's library does.
    if (this.#nullKnown && this.#place.state === "absent") return undefined;
    throw this.#notLoaded(name);
  }

  /** @internal */
  $put(name: string, value: unknown): void {
    const scalar = this.$members.scalars[name]!;
    const given = plainCopy(value);
    this.context.enqueue(
      `${this.$members.name}.${name}`,
      () => {
        this.$members.check(this.context, name);
        return this.$onTarget((target) => scalar.set!(target, found(given)));
      },
      { bytes: sizeOf(given) },
    );
    this.#loaded.set(name, given);
  }

  set(properties: Record<string, unknown>): void {
    const given = properties instanceof ClientObject ? (properties.toJSON() as Record<string, unknown>) : properties;
    for (const [name, value] of Object.entries(given)) {
      if (this.$members.objects[name] && typeof value === "object" && value !== null) {
        this.$child(name).set(value as Record<string, unknown>);
      } else if (this.$members.scalars[name]?.set) {
        this.$put(name, value);
      } else if (this.$members.scalars[name]) {
        throw new ApiError("InvalidArgument", `${this.$members.name}.${name} cannot be set.`);
      } else {
        throw this.$members.unknown(name);
      }
    }
  }

  /** ASSUMPTION: the host keeps no lasting references, so that there is nothing to track or let go. */
  track(): this {
    return this;
  }

  untrack(): this {
    return this;
  }

  toJSON(): unknown {
    const plain: Record<string, unknown> = {};
    for (const [name, value] of this.#loaded) {
      plain[name] = name === "items" ? (value as ClientObject[]).map((item) => item.toJSON()) : value;
    }
    for (const [name, child] of this.#children) {
      const below = child.toJSON() as Record<string, unknown>;
      if (Object.keys(below).length) plain[name] = below;
    }
    return plain;
  }

  #notLoaded(name: string): ApiError {
    const error = new ApiError("PropertyNotLoaded", undefined, `${this.$members.name}.${name}`);
    error.message = `The property '${name}' is not available. ${error.message}`;
    return error;
  }
}

/** Bytes a value takes in a request or response, as JSON. */
export function sizeOf(value: unknown): number {
  if (typeof value === "number") return 8;
  if (typeof value === "string") return value.length + 2;
  if (Array.isArray(value)) {
    let bytes = 2 + value.length;
    for (const item of value) bytes += typeof item === "number" ? 8 : sizeOf(item);
    return bytes;
  }
  return 5;
}

/** The value with what objects of the API in it stand for, such as the range that is the source of a list. */
const found = (value: unknown): unknown =>
  value instanceof ClientObject
    ? value.$target()
    : Array.isArray(value) || typeof value !== "object" || value === null || isDate(value)
      ? value
      : Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, found(inner)]));

/** A date made in any window. */
const isDate = (value: unknown): boolean => Object.prototype.toString.call(value) === "[object Date]";

/** The value as it was at the call: later changes of an array the caller keeps do not reach the queue. */
const plainCopy = (value: unknown): unknown =>
  Array.isArray(value)
    ? value.map(plainCopy)
    : value instanceof ClientObject || typeof value !== "object" || value === null || isDate(value)
      ? value
      : Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, plainCopy(inner)]));
