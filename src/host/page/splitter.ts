import { element } from "./elements";

/** Width of the task pane in pixels: Excel's own starts at about 350 and can be drawn wider. */
const narrowest = 320;
const widest = 600;
const step = 20;

/** Lets the line between grid and pane be moved by pointer and by arrow keys. */
export function startSplitter(): void {
  const splitter = element("splitter", HTMLHRElement);

  const widthNow = () => Number(splitter.getAttribute("aria-valuenow"));
  const setWidth = (wanted: number) => {
    const width = Math.round(Math.min(widest, Math.max(narrowest, wanted)));
    document.documentElement.style.setProperty("--pane-width", `${width}px`);
    splitter.setAttribute("aria-valuenow", String(width));
    splitter.setAttribute("aria-valuetext", `${width} pixels`);
  };

  splitter.addEventListener("pointerdown", (event) => {
    splitter.setPointerCapture(event.pointerId);
    splitter.dataset.moving = "";
  });
  splitter.addEventListener("pointermove", (event) => {
    if ("moving" in splitter.dataset) setWidth(window.innerWidth - event.clientX - splitter.offsetWidth / 2);
  });
  for (const end of ["pointerup", "pointercancel", "lostpointercapture"] as const) {
    splitter.addEventListener(end, () => delete splitter.dataset.moving);
  }

  splitter.addEventListener("keydown", (event) => {
    const wanted = {
      ArrowLeft: widthNow() + step,
      ArrowRight: widthNow() - step,
      Home: narrowest,
      End: widest,
    }[event.key];
    if (wanted === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    setWidth(wanted);
  });
}
