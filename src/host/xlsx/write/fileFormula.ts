import { outsideQuotes } from "../formulas";

/**
 * Functions younger than the file format carry a mark in the file ("future functions" of the published extensions to
 * the format, [MS-XLSX] 2.2.2; list from memory). Without it other programs show #NAME?.
 */
const marked = new Set(
  (
    "ACOT ACOTH AGGREGATE ARABIC ARRAYTOTEXT BASE BETA.DIST BETA.INV BINOM.DIST BINOM.DIST.RANGE BINOM.INV BITAND BITLSHIFT " +
    "BITOR BITRSHIFT BITXOR BYCOL BYROW CEILING.MATH CEILING.PRECISE CHISQ.DIST CHISQ.DIST.RT CHISQ.INV CHISQ.INV.RT " +
    "CHISQ.TEST CHOOSECOLS CHOOSEROWS COMBINA CONCAT CONFIDENCE.NORM CONFIDENCE.T COT COTH COVARIANCE.P COVARIANCE.S CSC " +
    "CSCH DAYS DECIMAL DROP ERF.PRECISE ERFC.PRECISE EXPAND EXPON.DIST F.DIST F.DIST.RT F.INV F.INV.RT F.TEST FLOOR.MATH " +
    "FLOOR.PRECISE FORECAST.ETS FORECAST.ETS.CONFINT FORECAST.ETS.SEASONALITY FORECAST.ETS.STAT FORECAST.LINEAR FORMULATEXT " +
    "GAMMA GAMMA.DIST GAMMA.INV GAMMALN.PRECISE GAUSS HSTACK HYPGEOM.DIST IFNA IFS ISFORMULA ISO.CEILING ISOMITTED ISOWEEKNUM LAMBDA LET " +
    "LOGNORM.DIST LOGNORM.INV MAKEARRAY MAP MAXIFS MINIFS MODE.MULT MODE.SNGL MUNIT NEGBINOM.DIST NORM.DIST NORM.INV " +
    "NORM.S.DIST NORM.S.INV NUMBERVALUE PDURATION PERCENTILE.EXC PERCENTILE.INC PERCENTRANK.EXC PERCENTRANK.INC PERMUTATIONA " +
    "PHI POISSON.DIST QUARTILE.EXC QUARTILE.INC RANDARRAY RANK.AVG RANK.EQ REDUCE RRI SCAN SEC SECH SEQUENCE SHEET SHEETS " +
    "SKEW.P SORTBY STDEV.P STDEV.S SWITCH T.DIST T.DIST.2T T.DIST.RT T.INV T.INV.2T T.TEST TAKE TEXTAFTER TEXTBEFORE TEXTJOIN " +
    "TEXTSPLIT TOCOL TOROW UNICHAR UNICODE UNIQUE VALUETOTEXT VAR.P VAR.S VSTACK WEIBULL.DIST WRAPCOLS WRAPROWS XLOOKUP " +
    "XMATCH XOR Z.TEST"
  ).split(" "),
);
const markedAsSheetFunctions = new Set(["FILTER", "SORT"]);

/** A formula as people write it ("=STDEV.S(Hops[@Best])") in the form of the file, without its equals sign. */
export function fileFormula(formula: string, ownTable: string | undefined): string {
  const bare = formula.replace(/^=/, "");
  return markNames(markFunctions(markIntersections(thisRowInFull(bare, ownTable))));
}

/** `Hops[@Best]` and `[@Best]` are short for what the file spells out. Text in quotes is left alone. */
const thisRowInFull = (formula: string, ownTable: string | undefined): string =>
  formula
    .split(/("(?:[^"]|"")*"|'(?:[^']|'')*'!)/)
    .map((piece, index) => {
      if (index % 2 === 1) return piece;
      return piece
        .replace(
          /([\p{L}_\\][\p{L}\p{N}_.\\]*)?\[@\[((?:'.|[^\]'])*)\]\]/gu,
          (_, table: string | undefined, column: string) => `${table ?? ownTable ?? ""}[[#This Row],[${column}]]`,
        )
        .replace(
          /([\p{L}_\\][\p{L}\p{N}_.\\]*)?\[@\[((?:'.|[^\]'])*)\]:\[((?:'.|[^\]'])*)\]\]/gu,
          (_, table: string | undefined, first: string, last: string) =>
            `${table ?? ownTable ?? ""}[[#This Row],[${first}]:[${last}]]`,
        )
        .replace(
          /([\p{L}_\\][\p{L}\p{N}_.\\]*)?\[@\]/gu,
          (_, table: string | undefined) => `${table ?? ownTable ?? ""}[#This Row]`,
        )
        .replace(
          /([\p{L}_\\][\p{L}\p{N}_.\\]*)?\[@([^[\]]+)\]/gu,
          (_, table: string | undefined, column: string) =>
            `${table ?? ownTable ?? ""}[[#This Row],[${column.trim()}]]`,
        );
    })
    .join("");

/** `G1#` is all that a formula spilt; the file calls a function for it. */
const markIntersections = (formula: string): string =>
  outsideQuotes(formula, (code) =>
    code
      .replace(/(\$?[A-Z]{1,3}\$?\d{1,7})#/g, "_xlfn.ANCHORARRAY($1)")
      .replace(/@(\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?)/g, "_xlfn.SINGLE($1)"),
  );

const markFunctions = (formula: string): string =>
  outsideQuotes(formula, (code) =>
    code.replace(/(?<![A-Za-z0-9_.])([A-Z][A-Z0-9.]*)(?=\()/gi, (name: string) => {
      const known = name.toUpperCase();
      if (marked.has(known)) return `_xlfn.${known}`;
      return markedAsSheetFunctions.has(known) ? `_xlfn._xlws.${known}` : name;
    }),
  );

/** Names that a formula gives to its own steps (LET, LAMBDA) carry a mark too. */
function markNames(formula: string): string {
  const names = new Set<string>();
  for (const call of formula.matchAll(/_xlfn\.(LET|LAMBDA)\(/g)) {
    const steps = stepsOf(formula, call.index + call[0].length);
    const given = call[1] === "LET" ? steps.filter((_, index) => index % 2 === 0).slice(0, -1) : steps.slice(0, -1);
    for (const name of given) if (/^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name)) names.add(name.toLowerCase());
  }
  if (names.size === 0) return formula;
  return outsideQuotes(formula, (code) =>
    code.replace(/(?<![\p{L}\p{N}_.!])[\p{L}_][\p{L}\p{N}_.]*(?![\p{L}\p{N}_.(!])/gu, (name) =>
      names.has(name.toLowerCase()) ? `_xlpm.${name}` : name,
    ),
  );
}

/** The steps between the brackets of a call that opens at `start`, split at its own commas. */
function stepsOf(formula: string, start: number): string[] {
  const steps: string[] = [];
  let [depth, from, quoted] = [0, start, false];
  for (let at = start; at < formula.length; at += 1) {
    const sign = formula[at] as string;
    if (sign === '"') quoted = !quoted;
    if (quoted) continue;
    if (depth === 0 && (sign === "," || sign === ")")) {
      steps.push(formula.slice(from, at).trim());
      from = at + 1;
      if (sign === ")") break;
    }
    if ("([{".includes(sign)) depth += 1;
    if (")]}".includes(sign)) depth -= 1;
  }
  return steps;
}
