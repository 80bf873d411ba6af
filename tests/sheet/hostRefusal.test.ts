import { runInNewContext } from "node:vm";
import { HostRefusal, trapHost } from "../../src/sheet/hostRefusal";

const thrown = (error: unknown) =>
  trapHost(async () => {
    throw error;
  }).catch((caught: unknown) => caught);

it("knows the program's refusal also where it comes out of another frame", async () => {
  const foreign = runInNewContext(
    'Object.assign(new Error("The worksheet is protected."), { code: "AccessDenied", debugInfo: {} })',
  );
  expect(foreign instanceof Error).toBe(false);
  const caught = await thrown(foreign);
  expect(caught).toBeInstanceOf(HostRefusal);
  expect(caught).toMatchObject({ code: "AccessDenied", message: "The worksheet is protected." });
});

it.each([
  ["a mistake of ours", new TypeError("undefined is not a function")],
  ["an error of another library that has a code", Object.assign(new Error("No."), { code: "ENOENT" })],
  ["nothing at all", undefined],
])("lets %s out as it is", async (_, error) => {
  expect(await thrown(error)).toBe(error);
});
