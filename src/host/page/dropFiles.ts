import { element } from "./elements";

/**
 * Lets a workbook be dropped on page or pane. Without this a browser would leave the page for the dropped file.
 */
export function acceptDrops(target: Document, open: (file: File) => void): void {
  const hint = element("drop-hint", HTMLDivElement);
  const carriesFiles = (event: DragEvent) => event.dataTransfer?.types.includes("Files") ?? false;
  let inside = 0;
  const settle = (count: number) => {
    inside = Math.max(0, count);
    hint.hidden = inside === 0;
  };
  target.addEventListener("dragenter", (event) => {
    if (carriesFiles(event)) settle(inside + 1);
  });
  target.addEventListener("dragleave", (event) => {
    if (carriesFiles(event)) settle(inside - 1);
  });
  target.addEventListener("dragover", (event) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    if (event.dataTransfer) event.dataTransfer.dropEffect = "copy";
  });
  target.addEventListener("drop", (event) => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    settle(0);
    const file = event.dataTransfer?.files[0];
    if (file) open(file);
  });
}
