import { refuse } from "../errors";

/** What a load call asks for, as a tree: an empty branch asks for all plain properties of what stands there. */
export type LoadTree = { readonly [member: string]: LoadTree };

type Growing = { [member: string]: Growing };

function plant(tree: Growing, path: string): void {
  let branch = tree;
  for (const part of path.split(/[/.]/)) {
    const name = part.trim();
    if (!name) refuse("InvalidArgument", `"${path}" is no property path.`);
    branch[name] ??= {};
    branch = branch[name] as Growing;
  }
}

/** `{ name: true, format: { fill: { color: true } } }`, and `$all` for all plain properties. */
function plantObject(tree: Growing, option: Record<string, unknown>): void {
  for (const [key, asked] of Object.entries(option)) {
    if (key === "$all" || key.startsWith("$") || asked === false || asked === undefined) continue;
    const branch: Growing = tree[key] ?? {};
    tree[key] = branch;
    if (typeof asked === "object" && asked !== null) plantObject(branch, asked as Record<string, unknown>);
  }
}

/** Reads every form of load option: nothing, "a, b/c", ["a", "b/c"], { select, expand } and { a: true }. */
export function loadTree(option: unknown): LoadTree {
  const tree: Growing = {};
  if (option === undefined || option === null) return tree;
  const paths = (list: unknown): string[] =>
    (Array.isArray(list) ? list : [list]).flatMap((item) =>
      typeof item === "string"
        ? item.split(",").filter((path) => path.trim() !== "")
        : refuse("InvalidArgument", "A load option is a property path."),
    );
  if (typeof option === "string" || Array.isArray(option)) {
    for (const path of paths(option)) plant(tree, path);
  } else if (typeof option === "object") {
    const { select, expand, top: _top, skip: _skip, ...named } = option as Record<string, unknown>;
    for (const path of [...paths(select ?? []), ...paths(expand ?? [])]) plant(tree, path);
    plantObject(tree, named);
  } else {
    refuse("InvalidArgument", "A load option is text, a list or an object.");
  }
  return tree;
}
