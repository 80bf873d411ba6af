/**
 * The embedded host: an Excel of our own, in Node and in the page.
 *
 *   const host = createHost(createEngine());              // Node: no user interface
 *   const host = createHost({ univer, api });             // page: the engine with its user interface
 *   host.install(window);                                 // Office, Excel, OfficeExtension, CustomFunctions
 *
 * Formulas stand in the cells in a form the engine can read. What a coach sees, as a formula bar shows it, is
 * `host.book.formulas.shown(formula, { sheetId, row, column })`; what is typed is translated on its way in by itself.
 * Charts are plain data: `host.charts.list(sheetId)`, `host.charts.dataOf(chart)`, `host.charts.listen(..)`.
 * What add-ins keep beside the cells: `host.book.state.save()` and `.load(..)`.
 */

export { createHost, type Host, type HostOptions } from "./api/createHost";
export { offeredMembers } from "./api/proxies/proxyClass";
export type { Book } from "./engine/book";
export type { Chart, ChartData, ChartSeries } from "./engine/charts";
export { createEngine, type Engine, type EngineOptions } from "./engine/createEngine";
