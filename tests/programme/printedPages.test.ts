import { block } from "../../sample-workbooks/block";
import { improver, injured, lateJoiner, lucky, overdue, weakest } from "../../sample-workbooks/plantedTruths";
import { demandTemplates } from "../../src/programme/demandTemplates";
import { demandWeights } from "../../src/programme/demandWeights";
import { diaryFromCells } from "../../src/programme/diaryFromCells";
import { keptSeries } from "../../src/programme/keptSeries";
import type { Page } from "../../src/programme/page";
import { athletePages, overviewPage, type PrintedFacts } from "../../src/programme/printedPages";
import { priorities } from "../../src/programme/priorities";
import { qualityProfiles } from "../../src/programme/qualityProfile";
import { review } from "../../src/programme/review";
import { weakerSides } from "../../src/programme/weakerSides";
import type { Background } from "../../src/store/background";
import { background as club, readSeason } from "./season";

/* The pages of the sample season, as a coach would hand them out after the retest. */

const background: Background = {
  ...club,
  weights: demandWeights(demandTemplates.find(({ sport }) => sport === "Handball")!, club).weights,
};

let facts: PrintedFacts;

beforeAll(async () => {
  const { kept, diary: grid } = await readSeason();
  const { results } = keptSeries(kept, background);
  const profiles = qualityProfiles(results, background);
  const sides = weakerSides(results, background);
  const read = diaryFromCells(grid);
  const diary = read?.entries ?? [];
  facts = {
    ...{ results, profiles, sides, diary, plan: [], today: "2026-10-30" },
    priorities: priorities(profiles, sides, background, { most: 3 }).priorities,
    review: review(results, diary, background, { begins: block.firstDay, ends: "2026-10-25" }),
  };
}, 120_000);

const textOf = ({ title, subtitle, parts }: Page): string =>
  [
    ...[title, subtitle],
    ...parts.flatMap((part) => {
      if (part.kind === "table")
        return [part.columns.map(({ heading }) => heading), ...part.rows].map((row) => row.join(" | "));
      return part.kind === "picture" ? part.chart.title : part.text;
    }),
  ].join("\n");

const pageOf = (athlete: string): string =>
  textOf(athletePages(facts, background).find(({ title }) => title === athlete)!);

describe("an athlete's page", () => {
  it("names nobody else, and holds nobody else's page", () => {
    const names = background.squad.map(({ athlete }) => athlete);
    const pages = athletePages(facts, background);
    expect(pages.length).toBeGreaterThan(30);
    for (const page of pages) {
      const text = textOf(page);
      expect(names.filter((name) => name !== page.title && text.includes(name))).toEqual([]);
    }
  });

  it("is the same whatever the others' sessions, priorities, changes and plans are", () => {
    const own = <Row extends { readonly athlete: string }>(rows: readonly Row[]) =>
      rows.filter(({ athlete }) => athlete === improver.athlete);
    const alone: PrintedFacts = {
      ...facts,
      ...{ sides: own(facts.sides), priorities: own(facts.priorities), diary: own(facts.diary) },
      review: { ...facts.review!, changes: own(facts.review!.changes) },
    };
    const page = athletePages(alone, background).find(({ title }) => title === improver.athlete)!;
    expect(textOf(page)).toBe(pageOf(improver.athlete));
  });

  it("tells the improver what was real, and the lucky one that nobody can tell", () => {
    const rows = (athlete: string) => pageOf(athlete).split("\n");
    for (const test of ["Back squat", "shuttle run", "Countermovement jump"])
      expect(rows(improver.athlete).find((row) => row.includes(test) && row.includes("yes, better"))).toBeDefined();
    expect(
      rows(lucky.athlete).find((row) => row.includes("Countermovement jump") && row.includes("cannot tell")),
    ).toBeDefined();
  });

  it("puts what counts most for the role first, with the standing's noise beside it", () => {
    const [heading, first] = pageOf(improver.athlete)
      .split("\n")
      .filter((row) => row.startsWith("Quality |") || row.startsWith("Speed |"));
    expect(heading).toContain("Asked for");
    // She is a wing: speed counts twice.
    expect(first).toMatch(/^Speed \| ■■■■\u00a02 \| [+−]?\d+ ± \d+ \|/);
  });

  it("tells the weakest in a quality to work on it", () => {
    const page = pageOf(weakest["Maximal strength"]);
    expect(page).toMatch(/\d\. Maximal strength\. You are \d+ points below the middle of the squad\./);
  });

  it("cautions about pain and return from injury, and about lifting before 18", () => {
    const minor = background.squad.find(({ birthYear }) => birthYear !== null && birthYear >= 2010)!.athlete;
    expect(pageOf(minor)).toContain("Under 18: heavy lifting and maximal tests only under qualified supervision.");
    const adult = background.squad.find(({ birthYear }) => birthYear !== null && birthYear <= 2000)!.athlete;
    expect(pageOf(adult)).not.toContain("Under 18");
    expect(pageOf(adult)).toContain("back from an injury: speak to your physiotherapist or doctor");
  });
});

describe("the page for the head coach", () => {
  it("says who changed, who is away and since when, and never why", () => {
    const text = textOf(overviewPage(facts, background, null));
    expect(text).toContain(improver.athlete);
    expect(text).toContain(`${injured.athlete} (last there on ${injured.lastDay})`);
    expect(text.match(/Not at the latest tests: (.*)\./)![1]).toBe(`${overdue.athlete} and ${injured.athlete}`);
    expect(text).not.toMatch(/physio|inj\b|out since/i);
    expect(text).not.toContain(lucky.athlete);
  });

  it("puts what the game asks for most first, and counts who stands out", () => {
    const page = overviewPage(facts, background, null);
    const table = page.parts.find((part) => part.kind === "table")!;
    if (table.kind !== "table") throw new Error("No table.");
    expect(table.rows[0]![0]).toBe("Throwing power");
    for (const [, , tested, below, above] of table.rows) {
      expect(Number(below) + Number(above)).toBeLessThanOrEqual(Number(tested));
    }
    expect(textOf(page)).toContain("Asked for, but not tested: Robustness.");
  });

  it("can be of one group, with nobody of another on it", () => {
    const text = textOf(overviewPage(facts, background, "Under-18"));
    const seniors = background.squad.filter(({ group }) => group === "Seniors");
    expect(seniors.filter(({ athlete }) => text.includes(athlete))).toEqual([]);
    expect(text).toContain("18 athletes");
  });

  it("says what is missing before retest, diary and plan, and for a squad of three", () => {
    const early = overviewPage({ ...facts, review: null, diary: [] }, background, null);
    expect(textOf(early)).toContain("Nobody has been tested again yet.");
    expect(textOf(early)).toContain("There is no diary of sessions to tell it from.");
    expect(textOf(early)).toContain("No block is planned yet.");
    const few = { ...facts, profiles: facts.profiles.filter(({ athlete }) => athlete === lateJoiner.athlete) };
    expect(textOf(overviewPage(few, background, null))).toContain("1 athlete");
  });
});
