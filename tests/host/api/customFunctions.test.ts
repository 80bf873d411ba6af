import { onSheet, openHost, valuesAt } from "./openHost";

/** Pages: excel/custom-functions-overview, -errors, -parameter-options, -json, -troubleshooting, -dynamic-arrays. */
const opened = openHost();

type Parameter = { type?: string; dimensionality?: string; optional?: boolean; repeating?: boolean };

/** Describes and associates one function as TRY.<name>. */
function offer(
  name: string,
  parameters: Parameter[],
  implementation: (...given: never[]) => unknown,
  more: { allowErrorForDataTypeAny?: boolean; options?: object } = {},
): void {
  const { host } = opened;
  host.CustomFunctions.associate(name, implementation);
  host.registerFunctions(
    {
      functions: [
        {
          id: name,
          name,
          parameters: parameters.map((parameter, index) => ({ name: `p${index}`, ...parameter })),
          options: more.options ?? {},
        },
      ],
      allowErrorForDataTypeAny: more.allowErrorForDataTypeAny ?? false,
    },
    "TRY",
  );
}

/** The value of a formula in C1, after A1:B3 were filled. */
async function valueGiven(formula: string, cells: unknown[][] = []): Promise<unknown> {
  await onSheet(opened.host, async (sheet) => {
    if (cells.length) sheet.getRange("A1").getResizedRange(cells.length - 1, cells[0]!.length - 1).values = cells;
    sheet.getRange("F1").formulas = [[formula]];
  });
  return (await valuesAt(opened.host, "F1"))[0]![0];
}

const seen = () => {
  const calls: unknown[][] = [];
  return { calls, spy: (...given: unknown[]) => calls.push(given.slice(0, -1)) };
};

describe("arguments", () => {
  test("a range arrives as rows: blanks as null, text and truth values as they are", async () => {
    const { calls, spy } = seen();
    offer("SEE", [{ type: "any", dimensionality: "matrix" }], spy as never);
    await valueGiven("=TRY.SEE(A1:B2)", [
      [1, "DNS"],
      ["", true],
    ]);
    expect(calls.at(-1)).toEqual([
      [
        [1, "DNS"],
        [null, true],
      ],
    ]);
  });

  test("an error in an argument is the result, and the function is not called (custom-functions-errors)", async () => {
    const { calls, spy } = seen();
    offer("SEE", [{ type: "any", dimensionality: "matrix" }], spy as never);
    expect(await valueGiven("=TRY.SEE(A1:A2)", [[1], ["=1/0"]])).toBe("#DIV/0!");
    expect(calls).toEqual([]);
  });

  test("with allowErrorForDataTypeAny it arrives as a value (custom-functions-json)", async () => {
    const { calls, spy } = seen();
    offer("SEE", [{ type: "any", dimensionality: "matrix" }], spy as never, { allowErrorForDataTypeAny: true });
    await valueGiven("=TRY.SEE(A1:A2)", [[1], ["=NA()"]]);
    expect(calls.at(-1)).toEqual([[[1], [expect.objectContaining({ type: "Error", basicValue: "#N/A" })]]]);
  });

  test("optional ones left out arrive as null, repeating ones as an array (custom-functions-parameter-options)", async () => {
    const { calls, spy } = seen();
    offer("SEE", [{ type: "number" }, { type: "any", optional: true }, { type: "any", repeating: true }], spy as never);
    await valueGiven("=TRY.SEE(1)");
    await valueGiven('=TRY.SEE(1,"x",2,3)');
    expect(calls).toEqual(
      expect.arrayContaining([
        [1, null, []],
        [1, "x", [2, 3]],
      ]),
    );
  });

  test("text that is no number does not fit a number: #VALUE!, uncalled", async () => {
    const { calls, spy } = seen();
    offer("SEE", [{ type: "number", dimensionality: "matrix" }], spy as never);
    expect(await valueGiven("=TRY.SEE(A1:A2)", [[1], ["inj"]])).toBe("#VALUE!");
    expect(calls).toEqual([]);
  });

  test("the address is told where it is required (custom-functions-parameter-options)", async () => {
    offer("WHERE", [], ((invocation: CustomFunctions.Invocation) => invocation.address) as never, {
      options: { requiresAddress: true },
    });
    expect(await valueGiven("=TRY.WHERE()")).toBe("Sheet1!F1");
  });
});

describe("results", () => {
  test("arrays spill, and shrink again (custom-functions-dynamic-arrays)", async () => {
    offer("COUNT.TO", [{ type: "number" }], ((to: number) =>
      Array.from({ length: to }, (_, i) => [i + 1, "x"])) as never);
    await valueGiven("=TRY.COUNT.TO(A1)", [[3]]);
    expect(await valuesAt(opened.host, "F1:G3")).toEqual([
      [1, "x"],
      [2, "x"],
      [3, "x"],
    ]);
    await opened.host.type("A1", 1);
    expect(await valuesAt(opened.host, "F1:G3")).toEqual([
      [1, "x"],
      ["", ""],
      ["", ""],
    ]);
  });

  test("an array that finds its place taken is #SPILL!", async () => {
    offer("TWO", [], (() => [[1], [2]]) as never);
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("F2").values = [["taken"]];
    });
    expect(await valueGiven("=TRY.TWO()")).toBe("#SPILL!");
  });

  test("null in an array shows 0, errors stay in their cell (custom-functions-errors)", async () => {
    const { CustomFunctions } = opened.host;
    offer("MIX", [], (() => [
      [null, new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "too few"), 3],
    ]) as never);
    await valueGiven("=TRY.MIX()");
    expect(await valuesAt(opened.host, "F1:H1")).toEqual([[0, "#N/A", 3]]);
  });

  test("an error on purpose shows its value and keeps its words; any other shows #VALUE! and stops nothing else", async () => {
    const { CustomFunctions } = opened.host;
    offer("FAIL", [{ type: "any" }], ((how: string) => {
      if (how === "purpose")
        throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, "Three trials are needed.");
      if (how === "throw") throw new Error("oops");
      return Number.NaN;
    }) as never);
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:A4").formulas = [
        ['=TRY.FAIL("purpose")'],
        ['=TRY.FAIL("throw")'],
        ['=TRY.FAIL("nan")'],
        ["=1+1"],
      ];
    });
    expect(await valuesAt(opened.host, "A1:A4")).toEqual([["#N/A"], ["#VALUE!"], ["#NUM!"], [2]]);
    expect(opened.host.errorMessageAt("A1")).toBe("Three trials are needed.");
    await opened.host.type("A1", "=1");
    await opened.host.type("A1", '=IFERROR(TRY.FAIL("purpose"),0)');
    expect(await valuesAt(opened.host, "A1")).toEqual([[0]]);
  });

  test("promises are waited for, refused ones are errors", async () => {
    offer("LATER", [{ type: "any" }], (async (value: unknown) => {
      await new Promise((resolve) => setTimeout(resolve, 5));
      if (value === "no") throw new Error("no");
      return value;
    }) as never);
    await onSheet(opened.host, async (sheet) => {
      sheet.getRange("A1:A3").formulas = [["=TRY.LATER(5)"], ['=TRY.LATER("no")'], ["=A1*2"]];
    });
    expect(await valuesAt(opened.host, "A1:A3")).toEqual([[5], ["#VALUE!"], [10]]);
  });

  test("a streaming function goes on giving values (custom-functions-web-reqs)", async () => {
    let give: ((value: number) => void) | undefined;
    offer(
      "STREAM",
      [],
      ((invocation: CustomFunctions.StreamingInvocation<number>) => {
        give = invocation.setResult;
        invocation.setResult(1);
      }) as never,
      { options: { stream: true } },
    );
    expect(await valueGiven("=TRY.STREAM()")).toBe(1);
    give?.(2);
    expect(await valuesAt(opened.host, "F1")).toEqual([[2]]);
  });
});

describe("registration and recalculation (custom-functions-troubleshooting)", () => {
  test("a name nobody described is #NAME?, one nobody associated #N/A, and both heal", async () => {
    expect(await valueGiven("=TRY.TWICE(A1)", [[4]])).toBe("#NAME?");
    opened.host.registerFunctions(
      { functions: [{ id: "TWICE", name: "TWICE", parameters: [{ name: "x", type: "number" }] }] },
      "TRY",
    );
    expect(await valuesAt(opened.host, "F1")).toEqual([["#N/A"]]);
    opened.host.CustomFunctions.associate("TWICE", (x: number) => x * 2);
    expect(await valuesAt(opened.host, "F1")).toEqual([[8]]);
  });

  test("a changed input is counted again; the name is shown in capitals", async () => {
    offer("TWICE", [{ type: "number" }], ((x: number) => x * 2) as never);
    await valueGiven("=try.twice(A1)", [[4]]);
    await opened.host.type("A1", 5);
    await onSheet(opened.host, async (sheet, context) => {
      const cell = sheet.getRange("F1").load("values,formulas");
      await context.sync();
      expect([cell.values[0]![0], cell.formulas[0]![0]]).toEqual([10, "=TRY.TWICE(A1)"]);
    });
  });
});

describe("functions that read the workbook (excel/call-excel-apis-from-custom-function)", () => {
  test("have their turn while a batch waits for them", async () => {
    const { Excel } = opened.host;
    offer("READ", [{ type: "string" }], (async (address: string) =>
      Excel.run(async (context) => {
        const cell = context.workbook.worksheets.getActiveWorksheet().getRange(address).load("values");
        await context.sync();
        return cell.values[0]![0];
      })) as never);
    expect(await valueGiven('=TRY.READ("A1")', [[42]])).toBe(42);
  });
});
