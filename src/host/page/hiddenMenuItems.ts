import type { MenuConfig } from "@univerjs/ui";

/** Commands of the grid's own menus that a coach's workbook has no use for, or that this page does not keep. */
const hidden = [
  "formula-ui.operation.insert-function.financial",
  "formula-ui.operation.insert-function.engineering",
  "formula-ui.operation.insert-function.information",
  "formula-ui.operation.insert-function.database",
  "sheet.command.numfmt.set.currency",
  "sheet.command.set-text-rotation",
  // Protection would need accounts and a server.
  "sheet.command.add-range-protection-from-toolbar",
  "sheet.contextMenu.permission",
  "sheet.command.add-range-protection-from-context-menu",
  "sheet.command.set-range-protection-from-context-menu",
  "sheet.command.delete-range-protection-from-context-menu",
  "sheet.command.view-sheet-permission-from-context-menu",
  "sheet.command.add-range-protection-from-sheet-bar",
  "sheet.command.delete-worksheet-protection-from-sheet-bar",
  "sheet.command.change-sheet-protection-from-sheet-bar",
  "sheet.command.view-sheet-permission-from-sheet-bar",
];

export const hiddenMenuItems: MenuConfig = Object.fromEntries(hidden.map((id) => [id, { hidden: true }]));
