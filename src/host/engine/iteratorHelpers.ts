/**
 * The engine calls `some` and `toArray` on iterators, which Node has from version 22 on. Node 20 gets just these two.
 */
type Helpers = {
  some?: (test: (value: unknown) => boolean) => boolean;
  toArray?: () => unknown[];
};

const iteratorPrototype = Object.getPrototypeOf(Object.getPrototypeOf([][Symbol.iterator]())) as Helpers;

function define(name: keyof Helpers, value: (this: Iterable<unknown>, ...given: never[]) => unknown): void {
  if (!iteratorPrototype[name]) {
    Object.defineProperty(iteratorPrototype, name, { configurable: true, writable: true, value });
  }
}

define("some", function (test: (value: unknown) => boolean) {
  for (const value of this) if (test(value)) return true;
  return false;
});
define("toArray", function () {
  return [...this];
});
