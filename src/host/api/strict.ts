import { ApiError } from "./errors";

/** Every member that is not here is refused by its name. */
export function strict<T extends object>(name: string, offered: T): T {
  return new Proxy(offered, {
    get(target, member, receiver) {
      if (typeof member === "symbol" || member in target) return Reflect.get(target, member, receiver);
      // A promise-like or a module is asked for these by whoever handles it; they are no members.
      if (["then", "toJSON", "__esModule", "$$typeof", "asymmetricMatch", "nodeType"].includes(member))
        return undefined;
      throw new ApiError("NotImplemented", `The embedded host does not offer ${name}.${member}.`, `${name}.${member}`);
    },
  });
}
