import type { Book } from "../../engine/book";
import type { Chart } from "../../engine/charts";
import { drawChart } from "./drawChart";
import { placementOf } from "./placement";
import { readPicture } from "./readPicture";

/** A chart keeps points; the page counts in pixels. */
const pixelsPerPoint = 96 / 72;
/** How far an arrow key moves a chart, in points. */
const nudge = 6;

type Frame = { readonly window: HTMLDivElement; readonly figure: HTMLElement; shown: string };

/**
 * Draws the charts of the active sheet over the grid. They follow scrolling, zoom and recalculation; each can be moved
 * by pointer or arrow keys, resized at its corner, and deleted.
 */
export function startChartLayer(book: Book, container: HTMLElement): { dispose: () => void } {
  const frames = new Map<string, Frame>();
  let isDue = false;

  const refresh = () => {
    isDue = false;
    const sheetId = book.workbook.getActiveSheet()?.getSheetId();
    const charts = book.charts.list(sheetId);
    for (const [id, { window }] of frames) {
      if (charts.some((chart) => chart.id === id)) continue;
      window.remove();
      frames.delete(id);
    }
    for (const chart of charts) {
      const frame = frames.get(chart.id) ?? addFrame(book, container, chart);
      frames.set(chart.id, frame);
      place(book, container, chart, frame);
      paint(book, chart, frame);
    }
  };
  /** Scrolling alone sends many commands a second: they are gathered until the next frame. */
  const soon = () => {
    if (isDue) return;
    isDue = true;
    requestAnimationFrame(refresh);
  };

  const stopCharts = book.charts.listen(soon);
  const commands = book.commands.onCommandExecuted(soon);
  const size = new ResizeObserver(soon);
  size.observe(container);
  soon();
  return {
    dispose: () => {
      stopCharts();
      commands.dispose();
      size.disconnect();
      container.replaceChildren();
    },
  };
}

function place(book: Book, container: HTMLElement, chart: Chart, { window, figure }: Frame): void {
  const placement = placementOf(book, container, chart.left * pixelsPerPoint, chart.top * pixelsPerPoint);
  window.hidden = placement === null;
  if (!placement) return;
  const { left, top, scale, window: area } = placement;
  Object.assign(window.style, {
    left: `${area.left}px`,
    top: `${area.top}px`,
    width: `${Math.max(0, area.right - area.left)}px`,
    height: `${Math.max(0, area.bottom - area.top)}px`,
  });
  Object.assign(figure.style, {
    left: `${left - area.left}px`,
    top: `${top - area.top}px`,
    width: `${chart.width * pixelsPerPoint}px`,
    height: `${chart.height * pixelsPerPoint}px`,
    transform: `scale(${scale})`,
  });
}

function paint(book: Book, chart: Chart, frame: Frame): void {
  const picture = readPicture(book, chart);
  const shown = JSON.stringify([picture, chart.width, chart.height]);
  if (shown === frame.shown) return;
  frame.shown = shown;
  const drawing = drawChart(picture, chart.id, chart.width * pixelsPerPoint, chart.height * pixelsPerPoint);
  frame.figure.querySelector(".chart-drawing")!.innerHTML = drawing;
  frame.figure.setAttribute("aria-label", `Chart: ${picture.title ?? chart.name}`);
}

function addFrame(book: Book, container: HTMLElement, chart: Chart): Frame {
  const window = document.createElement("div");
  window.className = "chart-window";
  const figure = document.createElement("figure");
  figure.className = "chart";
  figure.tabIndex = 0;
  figure.dataset.chart = chart.name;
  figure.innerHTML = '<div class="chart-drawing"></div><span class="chart-corner" aria-hidden="true"></span>';
  window.append(figure);
  container.append(window);
  moveByPointer(book, chart, figure);
  moveByKeys(book, chart, figure);
  figure.addEventListener("wheel", (event) => passToGrid(event, container), { passive: true });
  return { window, figure, shown: "" };
}

function moveByPointer(book: Book, chart: Chart, figure: HTMLElement): void {
  figure.addEventListener("pointerdown", (start) => {
    if (start.button !== 0) return;
    const resizes = start.target instanceof Element && start.target.classList.contains("chart-corner");
    const before = { left: chart.left, top: chart.top, width: chart.width, height: chart.height };
    const scale = figure.getBoundingClientRect().width / figure.offsetWidth;
    figure.setPointerCapture(start.pointerId);
    const move = (event: PointerEvent) => {
      const across = (event.clientX - start.clientX) / scale / pixelsPerPoint;
      const down = (event.clientY - start.clientY) / scale / pixelsPerPoint;
      if (resizes) set(book, chart, { width: before.width + across, height: before.height + down });
      else set(book, chart, { left: before.left + across, top: before.top + down });
    };
    figure.addEventListener("pointermove", move);
    for (const end of ["pointerup", "pointercancel"] as const) {
      figure.addEventListener(end, () => figure.removeEventListener("pointermove", move), { once: true });
    }
  });
}

function moveByKeys(book: Book, chart: Chart, figure: HTMLElement): void {
  figure.addEventListener("keydown", (event) => {
    const steps: { readonly [key: string]: readonly [number, number] } = {
      ArrowLeft: [-nudge, 0],
      ArrowRight: [nudge, 0],
      ArrowUp: [0, -nudge],
      ArrowDown: [0, nudge],
    };
    const step = steps[event.key];
    if (!step && event.key !== "Delete") return;
    event.preventDefault();
    event.stopPropagation();
    if (!step) book.charts.remove(chart);
    else if (event.shiftKey) set(book, chart, { width: chart.width + step[0], height: chart.height + step[1] });
    else set(book, chart, { left: chart.left + step[0], top: chart.top + step[1] });
  });
}

/** A chart stays on the sheet and never becomes too small to be taken hold of. */
function set(book: Book, chart: Chart, wanted: Partial<Pick<Chart, "left" | "top" | "width" | "height">>): void {
  const { left = chart.left, top = chart.top, width = chart.width, height = chart.height } = wanted;
  Object.assign(chart, {
    left: Math.max(0, left),
    top: Math.max(0, top),
    width: Math.max(120, width),
    height: Math.max(90, height),
  });
  book.charts.changed(chart);
}

/** Turning the wheel over a chart scrolls the grid below it. */
function passToGrid(event: WheelEvent, container: HTMLElement): void {
  const canvas = container.parentElement?.querySelector("canvas");
  canvas?.dispatchEvent(new WheelEvent("wheel", event));
}
