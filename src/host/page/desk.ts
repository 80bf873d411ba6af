import { CommandType } from "@univerjs/core";
import { SetWorksheetRowAutoHeightMutation } from "@univerjs/sheets";
import { ILayoutService } from "@univerjs/ui";
import type { Engine } from "../engine/createEngine";
import { createHost, type Host } from "../index";
import type { OpenedXlsx } from "../xlsx";
import { acceptPastes } from "./acceptPastes";
import { describeFunctions } from "./addIn";
import { startChartLayer } from "./charts/chartLayer";
import { copyTextAsTyped } from "./copyText";
import { lift, showFailure, showProgress } from "./cover";
import { acceptDrops } from "./dropFiles";
import { element } from "./elements";
import { startFocusAreas } from "./focusAreas";
import { addGridKeys } from "./gridKeys";
import { ask } from "./message";
import { startNameBox } from "./nameBox";
import { announcePane, loadPane, reportPaneMissing, showPane } from "./pane";
import { refuseFaultyFormulas } from "./refuseFormulas";
import { showFormulasAsTyped } from "./shownFormulas";
import { startSplitter } from "./splitter";
import { startGrid } from "./startGrid";

/** What lies on the desk: one open workbook. */
type OnDesk = {
  readonly engine: Engine;
  readonly host: Host;
  readonly charts: { dispose: () => void };
  readonly name: string;
  isChanged: boolean;
};

let onDesk: OnDesk | undefined;

const sample = { name: "fjordvik-handball", address: "sample-workbooks/fjordvik-handball.xlsx" };

const openButton = element("open-workbook", HTMLButtonElement);
const saveButton = element("save-workbook", HTMLButtonElement);
const toggleButton = element("toggle-pane", HTMLButtonElement);
const fileInput = element("workbook-file", HTMLInputElement);

const focusGrid = () => onDesk?.engine.univer.__getInjector().get(ILayoutService).focus();
const focusAreas = startFocusAreas(focusGrid);

/** Puts the sample workbook on the desk and makes the page's own controls work. */
export async function setUp(): Promise<void> {
  startSplitter();
  showPane(true);
  startNameBox(element("grid-container", HTMLDivElement), () => onDesk?.host.book, focusGrid);
  watch(document);
  openButton.addEventListener("click", () => fileInput.click());
  saveButton.addEventListener("click", () => void save());
  fileInput.addEventListener("change", () => {
    const file = fileInput.files?.[0];
    fileInput.value = "";
    if (file) void openFile(file);
  });
  window.addEventListener("beforeunload", (event) => {
    if (onDesk?.isChanged) event.preventDefault();
  });
  await showProgress(1, "Opening the sample workbook …");
  await loadTypefaces();
  await show(await readSample());
}

/** A canvas does not wait for typefaces as a page does; those that page.css stands in for must be there before it. */
async function loadTypefaces(): Promise<void> {
  await Promise.allSettled([...document.fonts].map((face) => face.load()));
}

/** Page and pane share these: a key or a dropped file means the same in both. */
function watch(target: Document): void {
  focusAreas(target);
  acceptDrops(target, (file) => void openFile(file));
  target.addEventListener(
    "keydown",
    (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey) return;
      const deed = { s: save, o: async () => fileInput.click() }[event.key.toLowerCase()];
      if (!deed || !onDesk) return;
      event.preventDefault();
      event.stopPropagation();
      void deed();
    },
    { capture: true },
  );
}

async function readSample(): Promise<OpenedXlsx> {
  const response = await fetch(sample.address);
  if (!response.ok) throw new Error(`${sample.address} is not there.`);
  const { openXlsx } = await import("../xlsx");
  return openXlsx(new Uint8Array(await response.arrayBuffer()), sample.name);
}

async function openFile(file: File): Promise<void> {
  if (onDesk?.isChanged && !(await mayReplace(onDesk.name))) return;
  await showProgress(1, `Opening ${file.name} …`);
  const opened = await read(file);
  if (!opened) return;
  try {
    await show(opened);
  } catch (error) {
    console.error(error);
    showFailure(`${file.name} could not be shown. Load the page again to go on with the sample workbook.`, () => {
      if (onDesk) onDesk.isChanged = false;
      location.reload();
    });
    return;
  }
  if (opened.notices.length > 0) {
    await ask({ title: "Opened, without some of it", items: opened.notices, goOn: "Go on" });
  }
}

/** Reads a file completely before what is open is put away; a file that is refused leaves it as it was. */
async function read(file: File): Promise<OpenedXlsx | undefined> {
  const { openXlsx, XlsxRefusal } = await import("../xlsx");
  try {
    return openXlsx(new Uint8Array(await file.arrayBuffer()), file.name.replace(/\.xlsx$/i, ""));
  } catch (error) {
    lift();
    if (!(error instanceof XlsxRefusal)) console.error(error);
    const text = error instanceof XlsxRefusal ? error.message : "Something in this file was not understood.";
    await ask({ title: `${file.name} was not opened`, text, goOn: "Go back" });
    return undefined;
  }
}

const mayReplace = (name: string) =>
  ask({
    title: "Leave the changes behind?",
    text: `${name} has changes that were not saved as .xlsx.`,
    goOn: "Open without saving",
    stay: "Keep working",
  });

/** Says first what the file cannot hold, then hands the file to the browser to be kept. */
async function save(): Promise<void> {
  if (!onDesk) return;
  const { saveBook } = await import("../xlsx");
  const { bytes, losses } = saveBook(onDesk.host.book);
  const title = "Save without some of it?";
  if (losses.length > 0 && !(await ask({ title, items: losses, goOn: "Save", stay: "Cancel" }))) return;
  download(bytes, `${onDesk.name}.xlsx`);
  onDesk.isChanged = false;
}

function download(bytes: Uint8Array, name: string): void {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type }));
  link.download = name;
  link.click();
  // The browser reads the bytes after this turn; afterwards they need not be held.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Puts a workbook on the desk in place of the one before: a fresh engine, a fresh host, a fresh pane. */
async function show(opened: OpenedXlsx): Promise<void> {
  document.documentElement.removeAttribute("data-ready");
  setControls(false);
  await showProgress(2, "Laying out the grid …");
  putAway();
  announcePane();
  onDesk = await layOut(opened);
  lift();
  await dockPane(onDesk.host);
  setControls(true);
}

/** The grid can be seen and used before the pane is there, and without it if it does not come. */
async function dockPane(host: Host): Promise<void> {
  announcePane();
  try {
    await describeFunctions(host);
    const frame = await loadPane();
    if (frame.contentDocument) watch(frame.contentDocument);
    document.documentElement.dataset.ready = "true";
  } catch (error) {
    // Another workbook has been opened meanwhile, with a pane of its own.
    if (onDesk?.host !== host) return;
    console.error(error);
    reportPaneMissing(() => void dockPane(host));
  }
}

async function layOut(opened: OpenedXlsx): Promise<OnDesk> {
  const { restoreBook } = await import("../xlsx");
  const { workbook } = opened;
  const engine = startGrid(element("grid-container", HTMLDivElement), workbook);
  const host = createHost(engine, { language: languageOfReader() });
  window.tapelineHost = host;
  restoreBook(host.book, opened);
  const charts = startChartLayer(host.book, element("charts", HTMLDivElement));
  showFormulasAsTyped(host.book);
  refuseFaultyFormulas(host.book);
  acceptPastes(host.book);
  copyTextAsTyped(host.book);
  addGridKeys(host.book);
  const name = workbook.name ?? "Workbook";
  element("workbook-name", HTMLHeadingElement).textContent = name;
  document.title = `${name} - Tapeline`;
  const laidOut: OnDesk = { engine, host, charts, name, isChanged: false };
  host.book.commands.onCommandExecuted(({ type, id }, options) => {
    if (type === CommandType.MUTATION && changesContent(id, options)) laidOut.isChanged = true;
  });
  const changed = () => {
    laidOut.isChanged = true;
  };
  host.charts.listen(changed);
  host.book.pageSetups.listen(changed);
  return laidOut;
}

/** Results of formulas and heights that follow from them are mutations of the engine too, but nobody's changes. */
const changesContent = (mutation: string, options: object = {}) =>
  mutation.startsWith("sheet.mutation.") &&
  mutation !== SetWorksheetRowAutoHeightMutation.id &&
  !("applyFormulaCalculationResult" in options);

function putAway(): void {
  delete window.tapelineHost;
  onDesk?.charts.dispose();
  onDesk?.host.dispose();
  element("grid-container", HTMLDivElement).replaceChildren();
}

function setControls(enabled: boolean): void {
  for (const button of [openButton, saveButton, toggleButton]) button.disabled = !enabled;
}

/** The add-in's language: what the address asks for (`?language=de`), else the browser's. This page is English. */
const languageOfReader = (): string => new URLSearchParams(location.search).get("language") ?? navigator.language;
