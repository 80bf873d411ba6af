import ts from "typescript";
import { describeFunctions, fetchedOnDemand } from "./describeFunctions";
import type { FunctionFile } from "./inspectFile";

/** What a coach can look up about one custom function. */
export type FunctionHelp = {
  /** As it is called after the add-in's name: "ASYMMETRY". */
  readonly id: string;
  readonly subject: string;
  /** Words a coach may look for that the description does not have. */
  readonly alsoFoundBy: string;
  /** What it answers, in one sentence. */
  readonly answers: string;
  /** The rest of its description: what it needs, leaves out, and what to mind. */
  readonly more: string;
  readonly parameters: readonly ParameterHelp[];
  /** Shape and unit of what it gives. */
  readonly gives: string;
  /** A formula that works as it stands, with its values in it. */
  readonly example: string;
  readonly source: string;
};

export type ParameterHelp = {
  readonly name: string;
  readonly help: string;
  readonly optional: boolean;
  /** Whether it takes cells; else a single value. */
  readonly takesCells: boolean;
};

/** Subjects in the order in which a coach meets them, the files of each, and other words for them. */
const subjects: readonly { subject: string; files: readonly string[]; alsoFoundBy: string }[] = [
  { subject: "Trials and scores", files: ["trials.ts"], alsoFoundBy: "attempts hop jump throw best average" },
  {
    subject: "Left and right",
    files: ["asymmetry.ts", "asymmetryNoise.ts"],
    alsoFoundBy: "single-leg hop limb leg arm symmetry imbalance",
  },
  {
    subject: "How far a test can be trusted",
    files: ["reliability.ts"],
    alsoFoundBy: "noise repeatability consistency measurement error",
  },
  { subject: "Change from test to retest", files: ["change.ts"], alsoFoundBy: "progress improvement noise real" },
  { subject: "Where an athlete stands", files: ["standing.ts"], alsoFoundBy: "profile norm percentile position" },
  {
    subject: "Strength and loads",
    files: ["strength.ts", "loadVelocity.ts"],
    alsoFoundBy: "1RM lift squat bench press kg",
  },
  { subject: "Jumps", files: ["jumps.ts"], alsoFoundBy: "hop countermovement drop power reactive" },
  { subject: "Sprints and turns", files: ["sprints.ts", "sprintCurves.ts"], alsoFoundBy: "speed acceleration agility" },
  { subject: "Endurance", files: ["endurance.ts"], alsoFoundBy: "aerobic beep run VO2max" },
  { subject: "Training load", files: ["load.ts"], alsoFoundBy: "RPE session diary week fatigue" },
];

/**
 * The reference of all custom functions, by subject, from the same comments that Excel's metadata come from.
 *
 * @throws where a file belongs to no subject, beside what `describeFunctions` throws for.
 */
export function describeReference(files: readonly FunctionFile[]): FunctionHelp[] {
  const { metadata, associations } = describeFunctions(files);
  const homeless = associations.find(({ file }) => !subjects.some((subject) => subject.files.includes(file)));
  if (homeless) throw new Error(`${homeless.file} belongs to no subject: name it in describeReference.ts.`);
  const tags = new Map(files.flatMap(tagsIn));
  return subjects.flatMap(({ subject, files: own, alsoFoundBy }) =>
    own.flatMap((file) =>
      associations
        .filter((association) => association.file === file)
        .map(({ id }): FunctionHelp => {
          const { description = "", parameters } = metadata.functions.find((one) => one.id === id)!;
          const [answers, more] = firstSentence(oneLine(description));
          return {
            id,
            subject,
            alsoFoundBy,
            answers,
            more,
            parameters: parameters.map(({ name, description: help = "", optional, dimensionality }) => ({
              name,
              help: oneLine(help),
              optional: optional === true,
              takesCells: dimensionality === "matrix",
            })),
            ...tags.get(id)!,
          };
        }),
    ),
  );
}

/** Module text of the reference, and of the way to each function's code. */
export function referenceModule(files: readonly FunctionFile[]): string {
  const code = describeFunctions(files).associations.map(({ id, exportName, file }) => {
    const chunk = fetchedOnDemand.has(file) ? '/* webpackChunkName: "statistics" */ ' : "";
    const path = JSON.stringify(`./${file.replace(/\.ts$/, "")}`);
    return `  ${JSON.stringify(id)}: () => import(${chunk}${path}).then((file) => file.${exportName}),\n`;
  });
  return (
    `export const functionReference = ${JSON.stringify(describeReference(files))};\n` +
    `export const functionCode = {\n${code.join("")}};\n`
  );
}

type Tags = Pick<FunctionHelp, "gives" | "example" | "source">;

/** The tags of each function that Excel does not ask for. */
function tagsIn({ file, text }: FunctionFile): [id: string, tags: Tags][] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  return source.statements.filter(ts.isFunctionDeclaration).flatMap((declaration) => {
    const tags = ts.getJSDocTags(declaration);
    const said = (...names: string[]) =>
      oneLine(ts.getTextOfJSDocComment(tags.find((tag) => names.includes(tag.tagName.text))?.comment) ?? "");
    const id = said("customfunction");
    return id === "" ? [] : [[id, { gives: said("returns"), example: said("example"), source: said("source") }]];
  });
}

const oneLine = (text: string): string => text.replace(/\s+/g, " ").trim();

/** A full stop before a capital letter ends a sentence; that of "et al. 2001" does not. */
function firstSentence(text: string): [first: string, rest: string] {
  const end = /\.\s+(?=[A-Z])/.exec(text);
  return end ? [text.slice(0, end.index + 1), text.slice(end.index + end[0].length)] : [text, ""];
}
