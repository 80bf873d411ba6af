import { addIn } from "./addIn";
import { element } from "./elements";

const section = element("pane", HTMLElement);
const status = element("pane-status", HTMLDivElement);
const statusText = element("pane-status-text", HTMLParagraphElement);
const retry = element("pane-retry", HTMLButtonElement);
const toggle = element("toggle-pane", HTMLButtonElement);

/** The task pane's frame, or `null` while there is none. */
export const paneFrame = (): HTMLIFrameElement | null => section.querySelector("iframe");

/** Says in the pane's place that it is on its way, while grid and workbook can already be seen. */
export function announcePane(): void {
  paneFrame()?.remove();
  status.hidden = false;
  statusText.textContent = "Loading the task pane …";
  retry.hidden = true;
}

/** Says that the pane is not there, and offers to try again; the grid goes on without it. */
export function reportPaneMissing(tryAgain: () => void): void {
  paneFrame()?.remove();
  status.hidden = false;
  statusText.textContent = "The task pane did not load. The workbook is open and can be saved.";
  retry.hidden = false;
  retry.onclick = tryAgain;
}

/** Loads the task pane afresh, as Excel does for every workbook. Resolves when its page has loaded. */
export async function loadPane(): Promise<HTMLIFrameElement> {
  const frame = document.createElement("iframe");
  frame.title = "Tapeline task pane";
  const loaded = new Promise((resolve) => frame.addEventListener("load", resolve, { once: true }));
  frame.src = addIn.pane;
  section.append(frame);
  await loaded;
  if (!frame.contentWindow || !("Office" in frame.contentWindow)) throw new Error("The task pane did not load.");
  status.hidden = true;
  return frame;
}

export const paneIsShown = (): boolean => document.documentElement.dataset.pane !== "hidden";

export function showPane(shown: boolean): void {
  document.documentElement.dataset.pane = shown ? "shown" : "hidden";
  toggle.setAttribute("aria-pressed", String(shown));
}

toggle.addEventListener("click", () => showPane(!paneIsShown()));
