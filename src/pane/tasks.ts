import { questions } from "../analyses/questions";
import type { Screen } from "./screen";
import { words } from "./words";

export type Part = "test" | "understand" | "plan" | "review" | "cells";

export type Task = { readonly title: string; readonly question: string; readonly screen: Screen };

const asked = (part: "test" | "understand" | "review"): Task[] =>
  questions
    .filter((question) => question.part === part)
    .map(({ id, title, question }) => ({ title, question, screen: { kind: "question", id } }));

/** Everything the pane offers, by the parts of the cycle. */
export const tasks: readonly { readonly part: Part; readonly list: readonly Task[] }[] = [
  {
    part: "test",
    list: [
      { ...words.tasks.setUp, screen: { kind: "setUp" } },
      { ...words.tasks.testDay, screen: { kind: "testDay" } },
      { ...words.tasks.keep, screen: { kind: "keep" } },
      ...asked("test"),
    ],
  },
  { part: "understand", list: asked("understand") },
  {
    part: "plan",
    list: [
      { ...words.tasks.priorities, screen: { kind: "priorities" } },
      { ...words.tasks.plan, screen: { kind: "plan" } },
      { ...words.tasks.deliver, screen: { kind: "deliver" } },
      { ...words.tasks.load, screen: { kind: "load" } },
    ],
  },
  {
    part: "review",
    list: [
      ...asked("review"),
      { ...words.tasks.outcome, screen: { kind: "outcome" } },
      { ...words.tasks.pages, screen: { kind: "pages" } },
    ],
  },
  { part: "cells", list: [{ ...words.tasks.functions, screen: { kind: "functions" } }] },
];
