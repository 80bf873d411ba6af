import { asProposed, type Decision, decided, overruled, type PriorityRow } from "../../src/store/priorityTable";

const rows = ["Speed", "Strength", "Endurance"].map((quality, index) =>
  asProposed({ athlete: "Ane Berg", rank: index + 1, quality, why: `${quality} is low.` }),
);

const withDecisions = (own: readonly PriorityRow[], decisions: readonly Decision[]) =>
  own.map((row) => ({ ...row, ...decisions.find(({ rank }) => rank === row.rank) }));

const order = (own: readonly PriorityRow[]) => decided(own).map(({ quality }) => quality);

describe("overruled(rows, rank, overruling, reason)", () => {
  it("moves a priority past the one before it, with the reason in both rows", () => {
    const moved = withDecisions(rows, overruled(rows, 2, { kind: "earlier" }, "Season begins"));
    expect(order(moved)).toEqual(["Strength", "Speed", "Endurance"]);
    expect(moved.map(({ reason }) => reason)).toEqual(["Season begins", "Season begins", null]);
    expect(decided(moved)[0]!.why).toBe("The coach's choice: Season begins");
  });

  it("leaves no decision behind when it is moved back", () => {
    const moved = withDecisions(rows, overruled(rows, 2, { kind: "earlier" }, "Season begins"));
    expect(withDecisions(moved, overruled(moved, 1, { kind: "later" }, null))).toEqual(rows);
  });

  it("cannot move the first one earlier, nor the last later", () => {
    expect(overruled(rows, 1, { kind: "earlier" }, null)).toEqual([]);
    expect(overruled(rows, 3, { kind: "later" }, null)).toEqual([]);
  });

  it("sets aside, takes another instead, and goes back to what was proposed", () => {
    const aside = withDecisions(rows, overruled(rows, 1, { kind: "aside" }, "Back pain: her physiotherapist decides"));
    expect(order(aside)).toEqual(["Strength", "Endurance"]);
    const instead = withDecisions(aside, overruled(aside, 1, { kind: "instead", quality: "Throwing" }, "Selected"));
    expect(order(instead)).toEqual(["Throwing", "Strength", "Endurance"]);
    expect(withDecisions(instead, overruled(instead, 1, { kind: "asProposed" }, null))).toEqual(rows);
  });
});
