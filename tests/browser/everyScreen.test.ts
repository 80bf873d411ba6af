import { everyScreen } from "./everyScreen";
import { type OpenPage, openPage, putOn, seriousFaults } from "./page";

/** One page for all: each screen is come to from the one before, as a coach would. */
jest.setTimeout(150_000);

let open: OpenPage;

beforeAll(async () => {
  open = await openPage();
}, 150_000);

afterAll(() => open.close());

/** Pixels of the page's own: at 320 the pane is narrowest; drawn to its widest and zoomed to 200 %, it has 300 left. */
const widths = [320, 300] as const;

/** What sticks out of the pane to the side, or is cut off in its own box, at a width. */
async function lost({ page, pane }: OpenPage, width: number): Promise<string[]> {
  await page.evaluate((px) => document.documentElement.style.setProperty("--pane-width", `${px}px`), width);
  const found = await pane.evaluate(async () => {
    // A bubble takes its new place in the frame after the one in which the pane has become narrower.
    for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
    const seen = document.body.clientWidth + 1;
    const isLost = (element: Element) => {
      const box = element.getBoundingClientRect();
      const isCut = element.matches("button, h1, h2, p, li, label, legend, summary, td, th, dt, dd");
      return box.width > 0 && (box.right > seen || (isCut && element.scrollWidth > element.clientWidth + 1));
    };
    return [...document.querySelectorAll("body *")]
      .filter((element) => !element.closest("svg") && getComputedStyle(element).display !== "inline" && isLost(element))
      .map((element) => `${element.tagName.toLowerCase()}: ${element.textContent?.slice(0, 40)}`);
  });
  return found.map((element) => `${width} px: ${element}`);
}

describe("every screen", () => {
  it.each(everyScreen)(
    "$name has no serious fault of accessibility, and loses nothing narrow or zoomed",
    async (stop) => {
      await stop.reach(open);
      const faults: string[] = [];
      for (const look of ["light", "dark"] as const) {
        await putOn(open, look);
        faults.push(...(await seriousFaults(open.pane)).map((fault) => `${look}: ${fault}`));
      }
      await putOn(open, "light");
      for (const width of widths) faults.push(...(await lost(open, width)));
      expect(faults).toEqual([]);
    },
  );
});
