import type { Area } from "../../engine/area";
import { ApiError, notImplemented } from "../errors";
import { publishedMembers } from "../published/members";
import { ClientObject, type Source, sizeOf } from "./clientObject";
import { ClientResult } from "./clientResult";
import type { EventSource } from "./eventHandlers";
import { EventHandlers } from "./eventHandlers";
import type { RequestContext } from "./requestContext";

/*
 * A class of the API is declared once, as data: its plain properties, the objects below it, its methods and events,
 * each with what it does to the engine's object (`Target`). Names, property types, parameters and results are those
 * of `@types/office-js`, so that a wrong one does not compile. `proxyClass` makes the class from it, and gives every
 * published member that is not declared a refusal that names it.
 */

/** Any function type. */
// biome-ignore lint/suspicious/noExplicitAny: the published typings are full of `any`.
type AnyFunction = (...given: any[]) => any;

/** A plain property. Without `set` it is read-only. */
export type Scalar<Target, Value> = {
  readonly get: (target: Target) => Value | null;
  readonly set?: (target: Target, value: Value) => void | Promise<void>;
};

/** A navigation property: the class of the object there, and how to get to it. */
export type Below<Target, Interface> = {
  readonly of: () => ProxyClass<Interface, never>;
  readonly at: (target: Target) => unknown;
};

/** A method that gives an object. `at` answers null where there is none. */
export type Gives<Target, Given extends readonly unknown[], Interface> = {
  readonly of: () => ProxyClass<Interface, never>;
  readonly at: (target: Target, ...given: Given) => unknown;
  /** Looks at calculated values, so that formulas must have theirs. */
  readonly reads?: boolean;
  /** What is done before the object is there, where the engine takes its time. */
  readonly first?: (target: Target, ...given: Given) => Promise<void>;
};

/** Objects of the API arrive in a method as what they stand for; ranges as areas of cells. */
type Received<T> = T extends Excel.Range ? Area : T extends OfficeExtension.ClientObject ? unknown : T;
type ReceivedAll<T extends readonly unknown[]> = { [K in keyof T]: Received<T[K]> };

/** What a method without a result does; with `reads`, once all formulas have their values. */
type Act<Target, Given extends readonly unknown[]> = (target: Target, ...given: Given) => void | Promise<void>;

type Method<Target, F extends AnyFunction> =
  ReturnType<F> extends OfficeExtension.ClientObject
    ? Gives<Target, ReceivedAll<Parameters<F>>, ReturnType<F>>
    : ReturnType<F> extends OfficeExtension.ClientResult<infer Value>
      ? { readonly answer: (target: Target, ...given: ReceivedAll<Parameters<F>>) => Value }
      :
          | Act<Target, ReceivedAll<Parameters<F>>>
          | { readonly act: Act<Target, ReceivedAll<Parameters<F>>>; readonly reads: true };

type Own = "context" | "isNullObject" | "load" | "toJSON" | "set" | "track" | "untrack" | "items";

/** The declaration of a class: each part lists members of the published interface. */
export type Members<Interface, Target> = {
  readonly scalars?: {
    readonly [K in Exclude<keyof Interface, Own> as Interface[K] extends
      | AnyFunction
      | OfficeExtension.ClientObject
      | OfficeExtension.EventHandlers<never>
      ? never
      : K]?: Scalar<Target, Interface[K]>;
  };
  readonly objects?: {
    readonly [K in Exclude<keyof Interface, Own> as Interface[K] extends OfficeExtension.ClientObject
      ? K
      : never]?: Below<Target, Interface[K]>;
  };
  readonly methods?: {
    readonly [K in Exclude<keyof Interface, Own> as Interface[K] extends AnyFunction
      ? K
      : never]?: Interface[K] extends AnyFunction ? Method<Target, Interface[K]> : never;
  };
  readonly events?: {
    // biome-ignore lint/suspicious/noExplicitAny: event arguments differ by event.
    readonly [K in keyof Interface as Interface[K] extends OfficeExtension.EventHandlers<any>
      ? K
      : never]?: EventSource<
      Target,
      // biome-ignore lint/suspicious/noExplicitAny: event arguments differ by event.
      Interface[K] extends OfficeExtension.EventHandlers<infer Arguments> ? Arguments : any
    >;
  };
  /** Of a collection: its members in order. */
  readonly items?: {
    readonly of: () => ProxyClass<unknown, never>;
    readonly list: (target: Target) => readonly unknown[];
  };
};

/** The declaration as the machinery sees it: types gone, published members and requirement sets added. */
export type AnyMembers = {
  readonly name: string;
  readonly scalars: Record<
    string,
    { get: (target: unknown) => unknown; set?: (target: unknown, value: unknown) => void | Promise<void> }
  >;
  readonly objects: Record<string, { of: () => ProxyClass<unknown, never>; at: (target: unknown) => unknown }>;
  readonly methods: Record<string, unknown>;
  readonly events: Record<string, EventSource<unknown, unknown>>;
  readonly items?: { of: () => ProxyClass<unknown, never>; list: (target: unknown) => readonly unknown[] };
  offered(context: RequestContext, member: string): boolean;
  /** Throws ApiNotFound for a member of a newer requirement set than the host says it has. */
  check(context: RequestContext, member: string): void;
  /** Whether the published class has the member. */
  isPublished(member: string): boolean;
  unknown(member: string): ApiError;
};

export type ProxyClass<Interface, Target> = {
  readonly className: string;
  readonly members: AnyMembers;
  create(context: RequestContext, source: () => unknown): ClientObject;
  /** Only for the compiler: what the class stands for. */
  readonly stands?: { readonly for: Interface; readonly target: (target: Target) => void };
};

const classes = new Map<string, AnyMembers>();

/** The classes the host offers, each with the names of its members. The table in DEVELOPERS.md is made from this. */
export const offeredMembers = (): ReadonlyMap<string, readonly string[]> =>
  new Map(
    [...classes].map(([name, { scalars, objects, methods, events, items }]) => [
      name,
      [...(items ? ["items"] : []), ...[scalars, objects, methods, events].flatMap((part) => Object.keys(part))].sort(),
    ]),
  );

/** Names of the members a class has in the published API. */
export const publishedNames = (className: string): string[] =>
  (publishedMembers[className] ?? "")
    .split(" ")
    .map((member) => member.split(/\(\)@|@/)[0]!)
    .filter((member) => member !== "");

export function proxyClass<Interface, Target>(
  name: string,
  declared: Members<Interface, Target>,
): ProxyClass<Interface, Target> {
  const published = new Set(publishedNames(name));
  const members = {
    name: name,
    scalars: declared.scalars ?? {},
    objects: declared.objects ?? {},
    methods: declared.methods ?? {},
    events: declared.events ?? {},
    ...(declared.items ? { items: declared.items } : {}),
    offered: (context: RequestContext, member: string) => context.surroundings.offers(name, member),
    check(context: RequestContext, member: string) {
      if (!context.surroundings.offers(name, member)) throw new ApiError("ApiNotFound", undefined, `${name}.${member}`);
    },
    isPublished: (member: string) => published.has(member),
    unknown: (member: string) => notImplemented(`${name}.${member}`),
  } as unknown as AnyMembers;

  class Offered extends ClientObject {
    constructor(context: RequestContext, source: Source) {
      super(context, members, source);
    }
  }
  Object.defineProperty(Offered, "name", { value: name });
  const member = (key: string, descriptor: PropertyDescriptor) =>
    Object.defineProperty(Offered.prototype, key, { configurable: true, ...descriptor });

  for (const key of published) {
    const refusal = () => {
      throw members.unknown(key);
    };
    member(key, { get: refusal, set: refusal });
  }
  for (const [key, scalar] of Object.entries(members.scalars)) {
    member(key, {
      get(this: Offered) {
        return this.$get(key);
      },
      set(this: Offered, value: unknown) {
        if (!scalar.set) throw new ApiError("InvalidArgument", `${name}.${key} cannot be set.`, `${name}.${key}`);
        this.$put(key, value);
      },
    });
  }
  for (const key of Object.keys(members.objects)) {
    member(key, {
      get(this: Offered) {
        return this.$child(key);
      },
      set(this: Offered, value: unknown) {
        this.set({ [key]: value });
      },
    });
  }
  for (const [key, source] of Object.entries(members.events)) {
    const handlers = new WeakMap<Offered, EventHandlers>();
    member(key, {
      get(this: Offered) {
        let own = handlers.get(this);
        if (!own) {
          own = new EventHandlers(this, key, source);
          handlers.set(this, own);
        }
        return own;
      },
    });
  }
  if (members.items) {
    member("items", {
      get(this: Offered) {
        return this.$get("items");
      },
    });
  }
  for (const [key, declaration] of Object.entries(members.methods)) {
    member(key, { value: method(members, key, declaration), writable: true });
  }
  classes.set(name, members);
  return { className: name, members, create: (context, source) => new Offered(context, source) };
}

type UntypedMethod =
  | { readonly act: (target: unknown, ...given: unknown[]) => void | Promise<void> }
  | ((target: unknown, ...given: unknown[]) => void | Promise<void>)
  | { readonly answer: (target: unknown, ...given: unknown[]) => unknown }
  | Gives<unknown, unknown[], unknown>;

function method(members: AnyMembers, key: string, declaration: unknown) {
  const declared = declaration as UntypedMethod;
  const location = `${members.name}.${key}`;
  const orNull = key.endsWith("OrNullObject");
  return function (this: ClientObject, ...given: unknown[]): unknown {
    for (const value of given) {
      if (value instanceof ClientObject && value.context !== this.context) throw new ApiError("InvalidRequestContext");
    }
    const bytes = given.some(Array.isArray) ? sizeOf(given.filter(Array.isArray)) : 0;
    const received = () => {
      members.check(this.context, key);
      return given.map((value) => (value instanceof ClientObject ? value.$target() : value));
    };
    const act = typeof declared === "function" ? declared : "act" in declared ? declared.act : null;
    if (act) {
      const reads = typeof declared !== "function";
      this.context.enqueue(location, () => this.$onTarget((target) => act(target, ...received())), { reads, bytes });
      return undefined;
    }
    if ("answer" in declared) {
      const result = new ClientResult();
      const answer = declared.answer;
      this.context.enqueue(location, () => this.$onTarget((target) => result.arrive(answer(target, ...received()))), {
        reads: true,
      });
      return result;
    }
    const gives = declared as Gives<unknown, unknown[], unknown>;
    const first = gives.first;
    if (first) {
      const reads = gives.reads ?? false;
      this.context.enqueue(location, () => this.$onTarget((target) => first(target, ...received())), { reads, bytes });
    }
    const object = gives.of().create(this.context, () => {
      const target = this.$find();
      // ASSUMPTION: what is below a null object is null too, whichever method asks for it.
      if (target === null) return null;
      const found = gives.at(target, ...received());
      if (found === null && !orNull) throw new ApiError("ItemNotFound");
      return found;
    });
    object.$instantiate(location, gives.reads ?? false, bytes);
    return object;
  };
}
