/** What of the program's theme is asked for. Which of it is there differs from platform to platform. */
export type HostTheme = Partial<Pick<Office.OfficeTheme, "isDarkTheme" | "bodyBackgroundColor">>;

/**
 * Whether the pane is dark: as the program says it is, else as its background is, else as the system prefers.
 * Excel on the web has given no theme at all (office-js issue 6134), and older programs only colours.
 */
export function isDark(theme: HostTheme | undefined, systemPrefersDark: boolean): boolean {
  if (typeof theme?.isDarkTheme === "boolean") return theme.isDarkTheme;
  return isDarkColour(theme?.bodyBackgroundColor) ?? systemPrefersDark;
}

/** Share of full white below which a ground is dark: about where black and white text are read equally well on it. */
const darkBelow = 0.18;

/** From "#RRGGBB", by the relative luminance of WCAG 2.2; null for what is no such colour. */
function isDarkColour(colour: string | undefined): boolean | null {
  const hex = /^#?([0-9a-f]{6})$/i.exec(colour ?? "")?.[1];
  if (!hex) return null;
  const [red = 0, green = 0, blue = 0] = [0, 2, 4]
    .map((start) => Number.parseInt(hex.slice(start, start + 2), 16) / 255)
    .map((share) => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < darkBelow;
}

/**
 * Keeps the page in the program's theme (`data-theme` of the root, which look.css goes by). Excel tells nobody when its
 * theme is changed: it is asked again whenever the coach comes back to the pane, and the system tells by itself.
 */
export function followTheme(): void {
  const system = window.matchMedia("(prefers-color-scheme: dark)");
  const follow = () => {
    const theme = isDark(Office.context.officeTheme as HostTheme | undefined, system.matches) ? "dark" : "light";
    document.documentElement.dataset.theme = theme;
  };
  follow();
  system.addEventListener("change", follow);
  window.addEventListener("focus", follow);
  document.addEventListener("visibilitychange", follow);
}
