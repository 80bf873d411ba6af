import { createRoot } from "react-dom/client";
import { chooseLanguage } from "../language/chooseLanguage";
import "./look.css";
import { followTheme } from "./theme";

/**
 * The spreadsheet program says when it is ready to be spoken to; nothing is drawn before. The pane is fetched once its
 * language is known, since much of what it says is said when its files are loaded.
 */
Office.onReady(async () => {
  const place = document.getElementById("pane");
  if (!place) throw new Error("The page has no place for the pane.");
  followTheme();
  const { displayLanguage, contentLanguage } = Office.context;
  document.documentElement.lang = await chooseLanguage(displayLanguage, contentLanguage);
  const { App } = await import(/* webpackChunkName: "app" */ "./App");
  createRoot(place).render(<App />);
});
