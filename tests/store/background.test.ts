import { memberCalled, noBackground, testCalled, weightFor } from "../../src/store/background";
import { weightsMatrix } from "../../src/store/qualityWeights";
import { batteryTest, squadMember } from "../sheet/storeRows";

const background = {
  squad: [squadMember("Ane Berg", { role: "Wing" })],
  battery: [batteryTest("Back squat", { measure: "load" }), batteryTest("Hop")],
  weights: [{ quality: "Speed", role: "Wing", weight: 2 }],
};

test("athletes and tests are found whatever their case and blanks", () => {
  expect(memberCalled(background, " ane  berg")).toBe(background.squad[0]);
  expect(memberCalled(background, "Ane")).toBeNull();
  expect(testCalled(background, "back SQUAT ", "load")).toBe(background.battery[0]);
  expect(testCalled(background, "Back squat", null)).toBeNull();
  expect(testCalled(noBackground, "Hop", null)).toBeNull();
});

test("a quality counts once where nothing else is said", () => {
  expect(weightFor(background, "speed", "WING")).toBe(2);
  expect(weightFor(background, "Speed", "Back")).toBe(1);
  expect(weightFor(background, "Speed", null)).toBe(1);
});

test("weights stand in a matrix of qualities and roles, with a gap where none is given", () => {
  const weights = [...background.weights, { quality: "Strength", role: "Pivot", weight: 0 }];
  expect(weightsMatrix(weights)).toEqual({
    roles: ["Wing", "Pivot"],
    rows: [
      { quality: "Speed", weights: [2, null] },
      { quality: "Strength", weights: [null, 0] },
    ],
  });
});
