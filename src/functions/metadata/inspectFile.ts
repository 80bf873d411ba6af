import ts from "typescript";

/** One source file of src/functions, named as it stands in that folder. */
export type FunctionFile = { readonly file: string; readonly text: string };

/** A custom function as its source declares it. */
export type ReadFunction = {
  readonly id: string;
  readonly exportName: string;
  readonly file: string;
  /** "file.ts:12", for messages. */
  readonly place: string;
  readonly parameters: readonly ReadParameter[];
};

export type ReadParameter = {
  readonly name: string;
  readonly type: "number" | "string" | "boolean" | "any";
  readonly matrix: boolean;
  readonly optional: boolean;
  readonly repeating: boolean;
  readonly described: boolean;
};

/** Tags that tie a function to its cell, its caller or the clock. Ours are plain: same input, same answer, at once. */
const refusedTags = new Set([
  "action",
  "cancelable",
  "capturescallingobject",
  "customenum",
  "excludefromautocomplete",
  "linkedentityloadservice",
  "requiresaddress",
  "requiresparameteraddresses",
  "requiresstreamaddress",
  "requiresstreamparameteraddresses",
  "streaming",
  "supportsync",
  "volatile",
]);

const idForm = /^[A-Z][A-Z0-9]*(\.[A-Z0-9]+)*$/;
const looksLikeCell = /^([A-Z]{1,3}[0-9]+|R[0-9]*C[0-9]*)$/;

/** The custom functions of one file, and everything in it that would fail silently in Excel. */
export function inspectFile({ file, text }: FunctionFile): { functions: ReadFunction[]; problems: string[] } {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const problems: string[] = [];
  const placeOf = (position: number) => `${file}:${source.getLineAndCharacterOfPosition(position).line + 1}`;
  const declarations = source.statements.filter(ts.isFunctionDeclaration).filter(isTagged);

  const understood = declarations.map((declaration) => jsDocOf(declaration)).filter((doc) => doc !== undefined);
  for (const mention of text.matchAll(/@custom[-_]?func\w*/gi)) {
    if (!understood.some((doc) => doc.pos <= mention.index && mention.index < doc.end)) {
      problems.push(
        `${placeOf(mention.index)}: @customfunction counts only in the one comment right before a top-level ` +
          "function declaration; here it would be ignored.",
      );
    }
  }

  const functions = declarations.map((declaration): ReadFunction => {
    const place = placeOf(declaration.getStart(source));
    const exportName = declaration.name?.text ?? "";
    const id = idOf(declaration);
    for (const problem of [
      ...signatureProblems(declaration),
      ...idProblems(id),
      ...commentProblems(declaration),
      ...declaration.parameters.flatMap((parameter, index) => parameterProblems(declaration, parameter, index)),
      ...returnProblems(declaration),
      ...referenceProblems(declaration, id),
    ]) {
      problems.push(`${place}: ${exportName || "function"}: ${problem}`);
    }
    return { id, exportName, file, place, parameters: declaration.parameters.map(readParameter) };
  });
  return { functions, problems };
}

function signatureProblems(declaration: ts.FunctionDeclaration): string[] {
  const has = (kind: ts.SyntaxKind) => declaration.modifiers?.some((modifier) => modifier.kind === kind) ?? false;
  return [
    ...(has(ts.SyntaxKind.ExportKeyword) && !has(ts.SyntaxKind.DefaultKeyword) && declaration.name
      ? []
      : ["must be exported by its name, else it cannot be associated."]),
    ...(has(ts.SyntaxKind.AsyncKeyword) ? ["must answer at once; async functions leave #BUSY! in the cell."] : []),
    ...(declaration.asteriskToken ? ["must not be a generator function."] : []),
    ...(declaration.typeParameters ? ["must not be generic; the types are read from the text."] : []),
    ...(declaration.body ? [] : ["must not be an overload; the first declaration alone would be described."]),
  ];
}

function idProblems(id: string): string[] {
  if (id === "") return ["needs an id of its own: @customfunction THE.ID. It never changes once coaches use it."];
  return [
    ...(idForm.test(id)
      ? []
      : [`the id "${id}" must be one word of upper-case A-Z, 0-9 and dots, starting with a letter, and stand alone.`]),
    ...(id.length < 3 ? [`the id "${id}" is shorter than 3 characters.`] : []),
    ...(id.length > 128 ? [`the id "${id}" is longer than 128 characters.`] : []),
    ...(looksLikeCell.test(id) ? [`the id "${id}" reads as a cell address.`] : []),
  ];
}

function commentProblems(declaration: ts.FunctionDeclaration): string[] {
  const comments = ts.getJSDocCommentsAndTags(declaration).filter(ts.isJSDoc);
  const names = declaration.parameters.map((parameter) => parameter.name.getText());
  const optionalNames = declaration.parameters.filter(isOptional).map((parameter) => parameter.name.getText());
  const tags = ts.getJSDocTags(declaration);
  const described = tags.filter(ts.isJSDocParameterTag);
  return [
    ...(docCommentsBefore(declaration) > 1 ? ["has more than one comment before it; only one is read."] : []),
    ...(plainText(comments[0]?.comment) === "" ? ["needs a description: it is what Excel shows while typing."] : []),
    ...(hasLinks(comments[0]?.comment) || tags.some((tag) => hasLinks(tag.comment))
      ? ["its comment must be plain text: {@link} arrives as [object Object]."]
      : []),
    ...tags
      .filter((tag) => refusedTags.has(tag.tagName.text.toLowerCase()))
      .map((tag) => `@${tag.tagName.text} is not used in this house.`),
    ...described
      .filter((tag) => !names.includes(tag.name.getText()))
      .map((tag) => `@param ${tag.name.getText()} describes no parameter.`),
    ...described
      .filter(
        (tag) => described.findIndex((other) => other.name.getText() === tag.name.getText()) < described.indexOf(tag),
      )
      .map((tag) => `@param ${tag.name.getText()} stands twice.`),
    ...described
      .filter((tag) => tag.typeExpression !== undefined)
      .map((tag) => `@param ${tag.name.getText()} must carry no {type}; the signature says it.`),
    ...described
      .filter((tag) => tag.isBracketed && !optionalNames.includes(tag.name.getText()))
      .map((tag) => `@param [${tag.name.getText()}] would make a required parameter optional; write "?" if it is.`),
  ];
}

function parameterProblems(
  declaration: ts.FunctionDeclaration,
  parameter: ts.ParameterDeclaration,
  index: number,
): string[] {
  if (!ts.isIdentifier(parameter.name)) return ["a parameter must have a plain name; a pattern cannot be described."];
  const name = parameter.name.text;
  const type = arrayType(parameter.type);
  const isLast = index === declaration.parameters.length - 1;
  const describing = ts.getJSDocParameterTags(parameter).find((tag) => tag.name.getText() === name);
  const problems: string[] = [];
  const say = (problem: string) => problems.push(`parameter "${name}" ${problem}`);

  if (plainText(describing?.comment) === "") say("needs a description: @param name words.");
  if (parameter.initializer) say("has a default value, which never applies: Excel passes null. Use ?? in the body.");
  if (parameter.dotDotDotToken) say('must not be "...rest": Excel hands over one array. Declare an array, last.');
  if (isOptional(parameter) && declaration.parameters.slice(index + 1).some((after) => !isOptional(after))) {
    say("is optional but stands before a required one.");
  }
  if (type.element === undefined) {
    say(
      parameter.type && /CustomFunctions\./.test(parameter.type.getText())
        ? "asks for the invocation; our functions know only their arguments."
        : "must be number, string, boolean, any or unknown, or an array of these.",
    );
  } else if (type.depth >= 2 && type.element !== "any") {
    say("is a range, so it must be unknown[][] (or any[][]): Excel refuses other cells before we can explain.");
  }
  if (type.depth > 3) say("has too many dimensions.");
  if ((type.depth === 1 || type.depth === 3) && !isLast) say("repeats, so it must be the last one.");
  return problems;
}

function returnProblems(declaration: ts.FunctionDeclaration): string[] {
  const tag = ts.getJSDocReturnTag(declaration);
  const alternatives =
    declaration.type && ts.isUnionTypeNode(declaration.type) ? declaration.type.types : [declaration.type];
  const types = alternatives.map(arrayType);
  const isRead = types.every(({ element, depth }) => element !== undefined && (depth === 0 || depth === 2));
  return [
    ...(plainText(tag?.comment) === "" ? ["needs @returns with words: what comes back and in which unit."] : []),
    ...(tag?.typeExpression ? ["@returns must carry no {type}; the signature says it."] : []),
    ...(isRead && (types.length === 1 || types.every(({ depth }) => depth === 0))
      ? []
      : ["must declare what it returns: number, string, boolean, any or unknown, or a [][] of one of these."]),
  ];
}

/** What the reference in the pane needs beside what Excel shows. */
function referenceProblems(declaration: ts.FunctionDeclaration, id: string): string[] {
  const said = (name: string) =>
    plainText(ts.getJSDocTags(declaration).find((tag) => tag.tagName.text === name)?.comment);
  return [
    ...(said("example").startsWith(`=TAPELINE.${id}(`)
      ? []
      : [`needs @example =TAPELINE.${id}(..) with its values in it, so that it works in any workbook.`]),
    ...(said("source") === "" ? ["needs @source: where the method comes from."] : []),
  ];
}

function readParameter(parameter: ts.ParameterDeclaration): ReadParameter {
  const { element, depth } = arrayType(parameter.type);
  return {
    name: parameter.name.getText(),
    type: element ?? "any",
    matrix: depth >= 2,
    optional: isOptional(parameter),
    repeating: depth === 1 || depth === 3,
    described: true,
  };
}

type Element = ReadParameter["type"];

const elements: Partial<Record<ts.SyntaxKind, Element>> = {
  [ts.SyntaxKind.NumberKeyword]: "number",
  [ts.SyntaxKind.StringKeyword]: "string",
  [ts.SyntaxKind.BooleanKeyword]: "boolean",
  [ts.SyntaxKind.AnyKeyword]: "any",
  [ts.SyntaxKind.UnknownKeyword]: "any",
};

/** `number[][]` -> number, 2. The element is undefined where the generator would guess or refuse. */
function arrayType(node: ts.TypeNode | undefined): { element: Element | undefined; depth: number } {
  let depth = 0;
  let inner = node;
  while (inner && ts.isArrayTypeNode(inner)) {
    depth += 1;
    inner = inner.elementType;
  }
  return { element: inner && elements[inner.kind], depth };
}

const isOptional = (parameter: ts.ParameterDeclaration): boolean => parameter.questionToken !== undefined;

const isTagged = (declaration: ts.FunctionDeclaration): boolean => tagOf(declaration) !== undefined;

const tagOf = (declaration: ts.FunctionDeclaration): ts.JSDocTag | undefined =>
  ts.getJSDocTags(declaration).find((tag) => tag.tagName.text.toLowerCase() === "customfunction");

/** The comment that carries the tag. */
const jsDocOf = (declaration: ts.FunctionDeclaration): ts.Node | undefined => tagOf(declaration)?.parent;

const idOf = (declaration: ts.FunctionDeclaration): string => plainText(tagOf(declaration)?.comment);

const plainText = (comment: string | ts.NodeArray<ts.JSDocComment> | undefined): string =>
  (ts.getTextOfJSDocComment(comment) ?? "").trim();

/** How many doc comments stand before it: the generator describes by the first, the language by the last. */
function docCommentsBefore(declaration: ts.FunctionDeclaration): number {
  const { text } = declaration.getSourceFile();
  const ranges = ts.getLeadingCommentRanges(text, declaration.getFullStart()) ?? [];
  return ranges.filter(({ pos }) => text.startsWith("/**", pos)).length;
}

const hasLinks = (comment: string | ts.NodeArray<ts.JSDocComment> | undefined): boolean =>
  comment !== undefined && typeof comment !== "string";
