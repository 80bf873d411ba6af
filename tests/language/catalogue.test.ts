import { join, relative } from "node:path";
import { german, rooms } from "../../src/language/german";
import { loadedWith, saidIn, sources } from "./saidWords";

const said = sources.flatMap(saidIn);
const sentences = [...new Set(said.map(({ sentence }) => sentence))];

const placesIn = (text: string): string[] => [...new Set(text.match(/\{\d+\}/g))].sort();

describe.each([german])("the catalogue of $tag", ({ catalogue }) => {
  it("has every sentence that is said", () => {
    expect(sentences.filter((sentence) => !(sentence in catalogue))).toEqual([]);
  });

  it("has no sentence that nobody says", () => {
    expect(Object.keys(catalogue).filter((sentence) => !sentences.includes(sentence))).toEqual([]);
  });

  it("fills every place of the sentence, but where its grammar decides", () => {
    const unlike = Object.entries(catalogue).filter(
      ([sentence, wording]) => typeof wording === "string" && placesIn(sentence).join() !== placesIn(wording).join(),
    );
    expect(unlike).toEqual([]);
  });

  it("says something, whatever stands in the places that its grammar looks at", () => {
    for (const [sentence, wording] of Object.entries(catalogue)) {
      if (typeof wording === "string") continue;
      const places = placesIn(sentence);
      for (const given of ["1", "7.5", "Ada and Bo"]) {
        const said = wording(...places.map(() => given));
        expect(said).not.toMatch(/undefined|NaN/);
        expect(said.trim()).not.toBe("");
      }
    }
  });
});

it("each sentence stands in one room, so that what a table says and what it is read by are the same word", () => {
  const all = Object.values(rooms).flatMap((room) => Object.keys(room));
  expect(all.filter((sentence, index) => all.indexOf(sentence) !== index)).toEqual([]);
});

it("nothing is said before the language is chosen: what the functions and the pane load at once says nothing on loading", () => {
  const src = join(__dirname, "../../src");
  const early = new Set(
    ["functions/index.ts", "pane/main.tsx", ...functionFiles()].flatMap((entry) =>
      [...loadedWith(entry)].map((path) => relative(src, path)),
    ),
  );
  const tooEarly = said.filter(({ file, onLoading }) => onLoading && early.has(file));
  expect(tooEarly.map(({ file, line, sentence }) => `${file}:${line} ${sentence}`)).toEqual([]);
});

/** The custom functions are handed over by the build, which reads them from their files. */
function functionFiles(): string[] {
  return sources
    .map((path) => relative(join(__dirname, "../../src"), path))
    .filter((file) => /^functions\/\w+\.ts$/.test(file));
}
