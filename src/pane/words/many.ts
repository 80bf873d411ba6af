import { say } from "../../language/say";

/** "1 athlete", "24 athletes": each said whole, since every language has its own way of saying more than one. */
export const many = (count: number, noun: Counted): string => nouns[noun](count);

type Counted = keyof typeof nouns;

const nouns = {
  athlete: (count: number) => (count === 1 ? say`1 athlete` : say`${count} athletes`),
  cell: (count: number) => (count === 1 ? say`1 cell` : say`${count} cells`),
  day: (count: number) => (count === 1 ? say`1 day` : say`${count} days`),
  entry: (count: number) => (count === 1 ? say`1 entry` : say`${count} entries`),
  exercise: (count: number) => (count === 1 ? say`1 exercise` : say`${count} exercises`),
  "hidden row": (count: number) => (count === 1 ? say`1 hidden row` : say`${count} hidden rows`),
  mark: (count: number) => (count === 1 ? say`1 mark` : say`${count} marks`),
  "more place": (count: number) => (count === 1 ? say`1 more place` : say`${count} more places`),
  "more test": (count: number) => (count === 1 ? say`1 more test` : say`${count} more tests`),
  "new result": (count: number) => (count === 1 ? say`1 new result` : say`${count} new results`),
  "new sheet": (count: number) => (count === 1 ? say`1 new sheet` : say`${count} new sheets`),
  page: (count: number) => (count === 1 ? say`1 page` : say`${count} pages`),
  place: (count: number) => (count === 1 ? say`1 place` : say`${count} places`),
  result: (count: number) => (count === 1 ? say`1 result` : say`${count} results`),
  role: (count: number) => (count === 1 ? say`1 role` : say`${count} roles`),
  row: (count: number) => (count === 1 ? say`1 row` : say`${count} rows`),
  sentence: (count: number) => (count === 1 ? say`1 sentence` : say`${count} sentences`),
  series: (count: number) => (count === 1 ? say`1 series of results` : say`${count} series of results`),
  "test number": (count: number) => (count === 1 ? say`1 test number` : say`${count} test numbers`),
  weight: (count: number) => (count === 1 ? say`1 weight` : say`${count} weights`),
} as const;
