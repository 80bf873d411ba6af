import { defaultTheme } from "@univerjs/themes";

/**
 * The page's colours. Text on paper and white on the accent have a contrast of at least 4.5 to 1 (WCAG 2.2, 1.4.3);
 * the same values stand as custom properties in page.css.
 */
const accent = {
  50: "#eef5f2",
  100: "#dfece7",
  200: "#bfd9d0",
  300: "#93bfb2",
  400: "#4f9585",
  500: "#1f7a6a",
  600: "#0f6b5c",
  700: "#0c574b",
  800: "#0a463d",
  900: "#083830",
};

const ink = {
  50: "#faf9f5",
  100: "#f3f2ec",
  200: "#e2e1d8",
  300: "#b9bdb4",
  400: "#75817c",
  500: "#55625f",
  600: "#3a4745",
  700: "#2b3836",
  800: "#1d2b2a",
  900: "#142120",
};

/** The grid library's theme in our colours: what it paints blue becomes our one accent, its greys become ink. */
export const gridTheme: typeof defaultTheme = {
  ...defaultTheme,
  black: ink[900],
  primary: accent,
  blue: accent,
  indigo: accent,
  gray: ink,
};
