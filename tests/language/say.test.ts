import { chooseLanguage } from "../../src/language/chooseLanguage";
import { dayInWords, english, inSentence, numeral, say, speak } from "../../src/language/say";
import { wordings } from "../../src/language/tableWords";

afterEach(() => speak(english));

const german = (catalogue = {}) => speak({ tag: "de", catalogue, decimalMark: ",", capitalNouns: true });

describe("say", () => {
  it("says in English what stands in the code", () => {
    expect(say`${3} of ${20} athletes, ${"12.5"} % on average.`).toBe("3 of 20 athletes, 12.5 % on average.");
  });

  it("says it in the language spoken, its places in the order of that language", () => {
    german({ "{0} of {1} athletes": "von {1} Athlet:innen {0}" });
    expect(say`${3} of ${20} athletes`).toBe("von 20 Athlet:innen 3");
  });

  it("lets a language's grammar look at what stands in the places", () => {
    german({ "{0} left": (days: string) => (days === "1" ? "noch ein Tag" : `noch ${days} Tage`) });
    expect([say`${1} left`, say`${4} left`]).toEqual(["noch ein Tag", "noch 4 Tage"]);
  });

  it("stays English where the catalogue lacks a sentence, rather than silent", () => {
    german();
    expect(say`Nobody has said ${"this"} yet.`).toBe("Nobody has said this yet.");
  });

  it.each([
    [1.5, "1,5"],
    ["-0.25", "-0,25"],
    ["+12.5 %", "+12,5 %"],
    ["3.42 m/s", "3,42 m/s"],
    ["7.10 s", "7,10 s"],
    [12, "12"],
    ["Hop 2.5 m to the left", "Hop 2.5 m to the left"],
    ["Sheet1.2!A1", "Sheet1.2!A1"],
  ])("writes %p with a decimal comma where it is a number: %s", (given, written) => {
    german();
    expect(numeral(given)).toBe(written);
  });

  it("keeps capitals of nouns within a sentence where the language does", () => {
    expect(inSentence("Jump height")).toBe("jump height");
    expect(inSentence("GK")).toBe("GK");
    german();
    expect(inSentence("Sprunghöhe")).toBe("Sprunghöhe");
  });

  it("writes days as the language does", () => {
    expect(dayInWords("2026-03-09")).toBe("9 Mar 2026");
    german();
    expect(dayInWords("2026-03-09")).toBe("09.03.2026");
  });
});

describe("chooseLanguage(display, content)", () => {
  it.each([
    ["de-DE", "de-DE", "de", "1,5"],
    ["de-CH", "de-CH", "de", "1.5"],
    ["en-US", "en-US", "en", "1.5"],
    // A Norwegian program: its language is not among ours, its decimal comma is.
    ["nb-NO", "nb-NO", "en", "1,5"],
    ["nonsense!", "nonsense!", "en", "1.5"],
  ])("of %s and %s is %s, with %s", async (display, content, tag, written) => {
    expect(await chooseLanguage(display, content)).toBe(tag);
    expect(numeral(1.5)).toBe(written);
    expect(say`Athlete`).toBe(tag === "de" ? "Athlet:in" : "Athlete");
  });
});

describe("wordings", () => {
  it("gives a table's word in every language, from whichever it is given in", () => {
    expect(wordings("Athlete")).toEqual(["Athlete", "Athlet:in"]);
    expect(wordings("Athlet:in")).toEqual(["Athlete", "Athlet:in"]);
  });

  it("gives all that a word may stand for", () => {
    expect(wordings("Wert")).toEqual(expect.arrayContaining(["Score", "Value", "Wert"]));
  });

  it("leaves the coach's own words alone", () => {
    expect(wordings("Mood")).toEqual(["Mood"]);
  });
});
