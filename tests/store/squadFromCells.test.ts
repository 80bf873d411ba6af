import { recogniseColumns } from "../../src/reading/recogniseColumns";
import { squadFromCells } from "../../src/store/squadFromCells";
import { gridOf } from "../reading/gridOf";

const squadOf = (rows: Parameters<typeof gridOf>[0]) => {
  const grid = gridOf(rows);
  return squadFromCells(grid, recogniseColumns(grid));
};

it.each([
  ["role before team", ["Role", "Team"], ["Wing", "Seniors"]],
  ["team before role", ["Team", "Position"], ["Seniors", "Wing"]],
  ["training group beside role", ["Role", "Training group"], ["Wing", "Seniors"]],
  ["group beside role", ["Group", "Role"], ["Seniors", "Wing"]],
])("takes role and team from their columns, whatever their order: %s", (_, headings, cells) => {
  const [ane] = squadOf([
    ["Name", ...headings, "Throwing hand", "Birth year", "Body mass (kg)", "Stature (cm)", "Notes"],
    ["Ane Berg", ...cells, "Left", 2004, 66.5, 172, "back from injury"],
    ["Liv Dal", ...cells, "Right", 2005, 70, 178, ""],
  ]);
  expect(ane).toEqual({
    athlete: "Ane Berg",
    role: "Wing",
    group: "Seniors",
    dominantSide: "left",
    birthYear: 2004,
    bodyMass: 66.5,
    stature: 172,
    notes: "back from injury",
  });
});

it("takes a team alone for no role, and a group alone for one", () => {
  const [inTeam] = squadOf([
    ["Name", "Team"],
    ["Ane Berg", "Seniors"],
  ]);
  expect([inTeam?.role, inTeam?.group]).toEqual([null, "Seniors"]);
  const [inGroup] = squadOf([
    ["Name", "Group"],
    ["Ane Berg", "Wing"],
  ]);
  expect([inGroup?.role, inGroup?.group]).toEqual(["Wing", null]);
});

it("keeps the year alone of a day of birth, typed as text or as the sheet keeps it", () => {
  const squad = squadOf([
    ["Name", "Date of birth"],
    ["Ane Berg", "3.5.2004"],
    // 1 January 2005.
    ["Liv Dal", 38353],
    ["Mia Foss", "soon"],
  ]);
  expect(squad.map(({ birthYear }) => birthYear)).toEqual([2004, 2005, null]);
});

it("is empty where no column holds names", () => {
  expect(
    squadOf([
      [1, 2],
      [3, 4],
    ]),
  ).toEqual([]);
});

it.each(["Athlete", "Name", "Spielerin"])(
  "takes the heading “%s” of a bare list of names for no athlete",
  (heading) => {
    expect(squadOf([[heading], ["Ane Berg"], ["Liv Dal"]]).map(({ athlete }) => athlete)).toEqual([
      "Ane Berg",
      "Liv Dal",
    ]);
  },
);
