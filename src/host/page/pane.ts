import { addIn } from "./addIn";
import { element } from "./elements";

const section = element("pane", HTMLElement);
const toggle = element("toggle-pane", HTMLButtonElement);

/** The task pane's frame, or `null` while there is none. */
export const paneFrame = (): HTMLIFrameElement | null => section.querySelector("iframe");

/** Loads the task pane afresh, as Excel does for every workbook. Resolves when its page has loaded. */
export async function loadPane(): Promise<HTMLIFrameElement> {
  paneFrame()?.remove();
  const frame = document.createElement("iframe");
  frame.title = "Tapeline task pane";
  const loaded = new Promise((resolve) => frame.addEventListener("load", resolve, { once: true }));
  frame.src = addIn.pane;
  section.append(frame);
  await loaded;
  if (!frame.contentWindow || !("Office" in frame.contentWindow)) throw new Error("The task pane did not load.");
  return frame;
}

export const paneIsShown = (): boolean => document.documentElement.dataset.pane !== "hidden";

export function showPane(shown: boolean): void {
  document.documentElement.dataset.pane = shown ? "shown" : "hidden";
  toggle.setAttribute("aria-pressed", String(shown));
}

toggle.addEventListener("click", () => showPane(!paneIsShown()));
