import { element } from "./elements";
import { paneFrame, paneIsShown } from "./pane";

type Area = { readonly holdsFocus: () => boolean; readonly focus: () => void };

const focusable = "button:enabled, input:enabled, select:enabled, textarea:enabled, a[href], [tabindex='0']";

/**
 * F6 goes from the top bar to the grid, to the task pane and round again; Shift+F6 goes the other way. Inside the grid
 * the tab key moves between cells, so this is the way out of it.
 */
export function startFocusAreas(focusGrid: () => void): (target: Document) => void {
  const grid = element("grid", HTMLElement);
  const areas = (): readonly Area[] => [
    {
      holdsFocus: () => document.activeElement?.closest(".top-bar") !== null,
      focus: () => document.querySelector<HTMLElement>(`.top-bar ${focusable.split(",")[0]}`)?.focus(),
    },
    {
      // The grid's own editor and menus live outside its section; whatever is neither bar nor pane is the grid.
      holdsFocus: () => !document.activeElement?.closest(".top-bar, .pane, .splitter"),
      focus: () => {
        grid.focus({ preventScroll: true });
        focusGrid();
      },
    },
    ...(paneIsShown()
      ? [
          {
            holdsFocus: () => document.activeElement?.closest(".pane, .splitter") !== null,
            focus: focusPane,
          },
        ]
      : []),
  ];

  const onKey = (event: KeyboardEvent) => {
    if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    const all = areas();
    const now = all.findIndex((area) => area.holdsFocus());
    all[(now + (event.shiftKey ? all.length - 1 : 1)) % all.length]?.focus();
  };
  return (target) => target.addEventListener("keydown", onKey, { capture: true });
}

/** Goes back to where the focus was in the pane, or to its first control. */
function focusPane(): void {
  const frame = paneFrame();
  const inside = frame?.contentDocument;
  if (!frame || !inside) return;
  frame.focus();
  const last = inside.activeElement;
  if (last && last !== inside.body) (last as HTMLElement).focus();
  else inside.querySelector<HTMLElement>(focusable)?.focus();
}
