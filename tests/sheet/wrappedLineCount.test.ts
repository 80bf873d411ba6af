import { wrappedLineCount } from "../../src/sheet/wrappedLineCount";

test.each([
  ["", 10, 1],
  ["one two", 7, 1],
  ["one two", 6, 2],
  ["incomprehensible", 5, 1],
  ["one two three", 7, 2],
  ["one\ntwo three", 9, 2],
])("%j takes, %i characters wide, %i lines", (text, width, lines) => {
  expect(wrappedLineCount(text, width)).toBe(lines);
});
