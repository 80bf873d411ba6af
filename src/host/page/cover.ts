import { element } from "./elements";

/** The card that covers grid and pane while they are not ready. */
const cover = element("cover", HTMLDivElement);
const title = element("cover-title", HTMLParagraphElement);
const text = element("cover-text", HTMLParagraphElement);
const progress = element("cover-progress", HTMLProgressElement);
const retry = element("cover-retry", HTMLButtonElement);

/** Tells how far things are: `done` of three steps, and what comes next. Resolves when it has been painted. */
export function showProgress(done: number, next: string): Promise<void> {
  cover.hidden = false;
  cover.dataset.state = "loading";
  title.textContent = "Setting the table";
  progress.hidden = false;
  progress.value = done;
  text.textContent = next;
  retry.hidden = true;
  return new Promise((resolve) => {
    // A hidden tab paints nothing; it must not wait for it.
    if (document.hidden) resolve();
    else requestAnimationFrame(() => setTimeout(resolve));
  });
}

/** Says that the page cannot go on, why, and offers the way out. */
export function showFailure(why: string, tryAgain: () => void): void {
  cover.hidden = false;
  cover.dataset.state = "failed";
  title.textContent = "This did not work";
  progress.hidden = true;
  text.textContent = why;
  retry.hidden = false;
  retry.onclick = tryAgain;
  retry.focus();
}

export function lift(): void {
  cover.hidden = true;
}
