import { IFormulaRuntimeService } from "@univerjs/engine-formula";
import type { Book } from "./book";
import { addressOf } from "./references";

type Node = { row: number; column: number; subUnitId: string; children: number[]; parents: number[]; treeId: number };

/**
 * Formulas that depend on themselves. The engine counts them as 0 and says nothing; Excel counts 0 too but warns.
 * Here they, and all that is counted from them, read as the error "#CYCLE!", so that nobody takes the 0 for a result.
 */
export class CircularReferences {
  readonly #book: Book;
  #suspected = false;
  #cells = new Set<string>();
  #addresses: string[] = [];

  constructor(book: Book) {
    this.#book = book;
    const runtime = book.injector.get(IFormulaRuntimeService);
    const enable = runtime.enableCycleDependency.bind(runtime);
    runtime.enableCycleDependency = () => {
      this.#suspected = true;
      enable();
    };
  }

  /** Addresses of the formulas in a circle. */
  get addresses(): readonly string[] {
    return this.#addresses;
  }

  has(sheetId: string, row: number, column: number): boolean {
    return this.#cells.size > 0 && this.#cells.has(`${sheetId} ${row} ${column}`);
  }

  /** Looks again after a calculation, if there was or is a circle. */
  async update(): Promise<void> {
    if (!this.#suspected && this.#cells.size === 0) return;
    this.#suspected = false;
    const trees = (await this.#book.api.getFormula().getAllDependencyTrees()) as unknown as Node[];
    const nodes = new Map(trees.map((node) => [node.treeId, node]));
    const circular = cyclesOf(nodes);
    const affected = new Set(circular);
    const queue = [...circular];
    for (let id = queue.pop(); id !== undefined; id = queue.pop()) {
      for (const parent of nodes.get(id)?.parents ?? []) {
        if (!affected.has(parent)) {
          affected.add(parent);
          queue.push(parent);
        }
      }
    }
    const placesOf = (ids: Iterable<number>) => [...ids].flatMap((id) => nodes.get(id) ?? []);
    this.#cells = new Set(placesOf(affected).map((node) => `${node.subUnitId} ${node.row} ${node.column}`));
    this.#addresses = placesOf(circular).map(({ subUnitId: sheetId, row, column }) =>
      addressOf({ book: this.#book, sheetId, row, column, rowCount: 1, columnCount: 1 }),
    );
  }
}

/** Ids of all nodes that can reach themselves (Tarjan's strongly connected components, without recursion). */
function cyclesOf(nodes: ReadonlyMap<number, Node>): Set<number> {
  const index = new Map<number, number>();
  const low = new Map<number, number>();
  const onStack = new Set<number>();
  const stack: number[] = [];
  const found = new Set<number>();
  for (const root of nodes.keys()) {
    if (index.has(root)) continue;
    const work: { id: number; next: number }[] = [{ id: root, next: 0 }];
    while (work.length) {
      const frame = work.at(-1)!;
      const { id } = frame;
      if (frame.next === 0) {
        index.set(id, index.size);
        low.set(id, index.get(id)!);
        stack.push(id);
        onStack.add(id);
      }
      const child = (nodes.get(id)?.children ?? [])[frame.next];
      frame.next += 1;
      if (child !== undefined) {
        if (!nodes.has(child)) continue;
        if (!index.has(child)) work.push({ id: child, next: 0 });
        else if (onStack.has(child)) low.set(id, Math.min(low.get(id)!, index.get(child)!));
        continue;
      }
      work.pop();
      const above = work.at(-1);
      if (above) low.set(above.id, Math.min(low.get(above.id)!, low.get(id)!));
      if (low.get(id) !== index.get(id)) continue;
      const component: number[] = [];
      let member: number | undefined;
      do {
        member = stack.pop();
        if (member === undefined) break;
        onStack.delete(member);
        component.push(member);
      } while (member !== id);
      if (component.length > 1 || nodes.get(id)?.children.includes(id)) for (const one of component) found.add(one);
    }
  }
  return found;
}
