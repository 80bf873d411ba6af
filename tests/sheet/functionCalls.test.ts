import { callsUs, firstCall, isMarked, unmarked } from "../../src/sheet/functionCalls";

describe("callsUs(formula)", () => {
  it.each([
    "=TAPELINE.ASYMMETRY(A1:C1,D1:F1)",
    "=tapeline.asymmetry(A1:C1,D1:F1)",
    '=IF(A1="x",2*TAPELINE.RSI(B1,C1),"")',
    "=@TAPELINE.ZSCORE(A1:A9)",
    "=_xldudf_TAPELINE_TYPICALERROR_PERCENT(A1:B9)",
    "=[2]!_xldudf_TAPELINE_RSI(A1,B1)",
  ])("sees it in %s", (formula) => expect(callsUs(formula)).toBe(true));

  it.each([
    "=SUM(A1:A3)",
    '="TAPELINE.RSI("&A1&")"',
    "=MYTAPELINE.RSI(A1)",
    "=OTHER.TAPELINE.RSI(A1)",
    "=TAPELINE.RSI",
    "TAPELINE.RSI(A1,B1)",
    12,
    "",
  ])("does not see it in %s", (formula) => expect(callsUs(formula)).toBe(false));
});

describe("unmarked(formula)", () => {
  it.each([
    ["=_xldudf_TAPELINE_ASYMMETRY(A1:C1,D1:F1)", "=TAPELINE.ASYMMETRY(A1:C1,D1:F1)"],
    ["=_xldudf_TAPELINE_TYPICALERROR_PERCENT(A1:B9)", "=TAPELINE.TYPICALERROR.PERCENT(A1:B9)"],
    ["=[2]!_xldudf_TAPELINE_RSI(A1,B1)*2", "=TAPELINE.RSI(A1,B1)*2"],
    ["=Other.xla!_xldudf_TAPELINE_RSI(A1,B1)", "=TAPELINE.RSI(A1,B1)"],
    ["='C:\\Some folder\\it''s.xla'!_xldudf_TAPELINE_RSI(A1,B1)", "=TAPELINE.RSI(A1,B1)"],
    ["=1+_xldudf_TAPELINE_RSI(Sheet1!A1,'My sheet'!B1)", "=1+TAPELINE.RSI(Sheet1!A1,'My sheet'!B1)"],
    [
      "=IFERROR(_xldudf_TAPELINE_ICC(A1:B9),_xldudf_TAPELINE_ICC(C1:D9))",
      "=IFERROR(TAPELINE.ICC(A1:B9),TAPELINE.ICC(C1:D9))",
    ],
  ])("%s is %s", (formula, plain) => {
    expect(unmarked(formula)).toBe(plain);
    expect(isMarked(formula)).toBe(true);
    expect(isMarked(plain)).toBe(false);
  });

  it.each(["=_xldudf_OTHER_RSI(A1)", '="_xldudf_TAPELINE_RSI("&A1', "=TAPELINE.RSI(A1,B1)"])("leaves %s", (formula) =>
    expect(unmarked(formula)).toBe(formula),
  );
});

describe("firstCall(formula)", () => {
  it.each([
    ["=TAPELINE.ASYMMETRY(A1:C1,D1:F1)", "ASYMMETRY", ["A1:C1", "D1:F1"]],
    ['=TAPELINE.ICC({1,2;3,4}, "2,1",,0.9)', "ICC", ["{1,2;3,4}", '"2,1"', "", "0.9"]],
    [
      "=ROUND(TAPELINE.RSI('Drop, \"new\" (jump)'!A1,MAX(B1,C1)),1)",
      "RSI",
      ["'Drop, \"new\" (jump)'!A1", "MAX(B1,C1)"],
    ],
    ["=TAPELINE.ZSCORE(Hops[[Left],[Right]])", "ZSCORE", ["Hops[[Left],[Right]]"]],
    ["=_xldudf_TAPELINE_TYPICALERROR_GAPS(A1:B9)", "TYPICALERROR.GAPS", ["A1:B9"]],
    ["=TAPELINE.RSI()", "RSI", []],
  ])("of %s", (formula, id, given) => expect(firstCall(formula)).toEqual({ id, arguments: given }));

  it("is nothing where there is none", () => expect(firstCall("=SUM(A1)")).toBeNull());
});
