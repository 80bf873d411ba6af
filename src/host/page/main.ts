import "./page.css";
import { showFailure, showProgress } from "./cover";

/** The grid is large: this small script shows the page at once and loads the rest behind the cover. */
async function start(): Promise<void> {
  try {
    await showProgress(0, "Loading the grid …");
    const { setUp } = await import("./desk");
    await setUp();
  } catch (error) {
    console.error(error);
    showFailure("The page could not be set up. Reload it; if that does not help, try another browser.", () =>
      location.reload(),
    );
  }
}

void start();
