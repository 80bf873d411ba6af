import { followTheme, isDark } from "../../src/pane/theme";

describe("the pane is dark", () => {
  it.each([
    ["as the program says, whatever the system prefers", { isDarkTheme: true }, false, true],
    ["not where the program says it is light", { isDarkTheme: false, bodyBackgroundColor: "#262626" }, true, false],
    // The grounds of Office's themes as its interface shows them, from memory.
    ["by a black ground", { bodyBackgroundColor: "#000000" }, false, true],
    ["by a dark grey ground", { bodyBackgroundColor: "#262626" }, false, true],
    ["not by a white ground", { bodyBackgroundColor: "#FFFFFF" }, true, false],
    ["not by a light grey ground", { bodyBackgroundColor: "#E6E6E6" }, true, false],
    // Relative luminance by the formula of WCAG 2.2: 0.216 and 0.133.
    ["not by a ground lighter than the middle", { bodyBackgroundColor: "#808080" }, true, false],
    ["by a ground darker than the middle", { bodyBackgroundColor: "#666666" }, false, true],
    ["by the system where the program says nothing", undefined, true, true],
    ["by the system where the colour is none", { bodyBackgroundColor: "white" }, true, true],
    ["not where neither says so", {}, false, false],
  ])("%s", (_, theme, systemPrefersDark, expected) => {
    expect(isDark(theme, systemPrefersDark)).toBe(expected);
  });
});

describe("a theme changed while the pane is open", () => {
  const system = Object.assign(new EventTarget(), { matches: false });
  const shown = () => document.documentElement.dataset.theme;
  const context: { officeTheme?: { isDarkTheme: boolean } } = {};

  beforeAll(() => {
    Object.assign(globalThis, { Office: { context } });
    window.matchMedia = () => system as unknown as MediaQueryList;
    followTheme();
  });

  it("is followed when the system tells", () => {
    expect(shown()).toBe("light");
    system.matches = true;
    system.dispatchEvent(new Event("change"));
    expect(shown()).toBe("dark");
  });

  it("is followed when the coach comes back from the program's own settings", () => {
    context.officeTheme = { isDarkTheme: false };
    window.dispatchEvent(new Event("focus"));
    expect(shown()).toBe("light");
    context.officeTheme = { isDarkTheme: true };
    document.dispatchEvent(new Event("visibilitychange"));
    expect(shown()).toBe("dark");
  });
});
