import type { Area } from "../../engine/area";
import { refuse } from "../errors";
import type { AnyMembers } from "../proxies/proxyClass";
import { Range } from "./range";
import type { Areas } from "./rangeAreas";
import { RangeBorderCollection } from "./rangeBorders";

/*
 * Range.getCellProperties and its kin: what is asked for is told by an object of trues, the answer has an object of
 * the same shape for each cell, row or column. The properties are those of the objects that offer them anyway.
 */

type Tree = { readonly [name: string]: unknown };

const borderSides: Readonly<Record<string, string>> = {
  bottom: "EdgeBottom",
  diagonalDown: "DiagonalDown",
  diagonalUp: "DiagonalUp",
  horizontal: "InsideHorizontal",
  left: "EdgeLeft",
  right: "EdgeRight",
  top: "EdgeTop",
  vertical: "InsideVertical",
};

/** Borders are told by side here, and by index elsewhere. */
function borderOf(areas: Areas, side: string): unknown {
  return { areas, side: borderSides[side] ?? refuse("InvalidArgument", `"${side}" is no border.`) };
}

function read(members: AnyMembers, target: unknown, tree: Tree): Record<string, unknown> {
  const plain: Record<string, unknown> = {};
  for (const [name, asked] of Object.entries(tree)) {
    if (asked === false || asked === undefined || asked === null) continue;
    if (members.name === "RangeBorderCollection" && name in borderSides) {
      plain[name] = read(
        RangeBorderCollection.members.items!.of().members,
        borderOf(target as Areas, name),
        asked as Tree,
      );
    } else if (members.scalars[name]) {
      plain[name] = members.scalars[name].get(target);
    } else if (members.objects[name]) {
      const below = members.objects[name];
      plain[name] = read(below.of().members, below.at(target), asked as Tree);
    } else {
      throw members.unknown(name);
    }
  }
  return plain;
}

function write(members: AnyMembers, target: unknown, tree: Tree): void {
  for (const [name, value] of Object.entries(tree)) {
    if (value === undefined || value === null) continue;
    if (members.name === "RangeBorderCollection" && name in borderSides) {
      write(RangeBorderCollection.members.items!.of().members, borderOf(target as Areas, name), value as Tree);
    } else if (members.scalars[name]?.set) {
      members.scalars[name].set(target, value);
    } else if (members.objects[name] && typeof value === "object") {
      const below = members.objects[name];
      write(below.of().members, below.at(target), value as Tree);
    } else {
      throw members.unknown(name);
    }
  }
}

const cell = (area: Area, row: number, column: number): Area => ({
  ...area,
  row: area.row + row,
  column: area.column + column,
  rowCount: 1,
  columnCount: 1,
});

const rowOf = (area: Area, row: number): Area => ({ ...area, row: area.row + row, rowCount: 1 });
const columnOf = (area: Area, column: number): Area => ({ ...area, column: area.column + column, columnCount: 1 });

const each = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index));

export const readCells = (area: Area, tree: Tree): unknown[][] =>
  each(area.rowCount, (row) => each(area.columnCount, (column) => read(Range.members, cell(area, row, column), tree)));

export const readRows = (area: Area, tree: Tree): unknown[] =>
  each(area.rowCount, (row) => read(Range.members, rowOf(area, row), tree));

export const readColumns = (area: Area, tree: Tree): unknown[] =>
  each(area.columnCount, (column) => read(Range.members, columnOf(area, column), tree));

const sized = (given: unknown, count: number): Tree[] =>
  Array.isArray(given) && given.length === count
    ? given
    : refuse("InvalidArgument", `${count} objects are wanted, one for each row or column.`);

export function writeCells(area: Area, given: unknown): void {
  sized(given, area.rowCount).forEach((inRow, row) => {
    sized(inRow, area.columnCount).forEach((tree, column) => {
      write(Range.members, cell(area, row, column), tree ?? {});
    });
  });
}

export const writeRows = (area: Area, given: unknown): void =>
  sized(given, area.rowCount).forEach((tree, row) => {
    write(Range.members, rowOf(area, row), tree ?? {});
  });

export const writeColumns = (area: Area, given: unknown): void =>
  sized(given, area.columnCount).forEach((tree, column) => {
    write(Range.members, columnOf(area, column), tree ?? {});
  });
