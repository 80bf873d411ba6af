import type { MenuConfig } from "@univerjs/ui";

/** Entries of the grid's own menus that a coach's workbook has no use for. */
export const hiddenMenuItems: MenuConfig = {};
