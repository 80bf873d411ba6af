import { createRoot } from "react-dom/client";
import { App } from "./App";
import "./look.css";
import { followTheme } from "./theme";

/** The spreadsheet program says when it is ready to be spoken to; nothing is drawn before. */
Office.onReady(() => {
  const place = document.getElementById("pane");
  if (!place) throw new Error("The page has no place for the pane.");
  followTheme();
  createRoot(place).render(<App />);
});
