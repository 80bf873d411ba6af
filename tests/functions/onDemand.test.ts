import { onDemand } from "../../src/functions/onDemand";

describe("onDemand(fetchFile, name)", () => {
  it("fetches its file for the first call, and answers at once from then on", async () => {
    const fetchFile = jest.fn(async () => ({ double: (value: number) => 2 * value }));
    const double = onDemand(fetchFile, "double");
    expect(fetchFile).not.toHaveBeenCalled();
    await expect(double(21)).resolves.toBe(42);
    expect(double(4)).toBe(8);
    expect(fetchFile).toHaveBeenCalledTimes(1);
  });

  it("passes errors on, both ways", async () => {
    const refusing = onDemand(
      async () => ({
        refuse: () => {
          throw new Error("no");
        },
      }),
      "refuse",
    );
    await expect(refusing()).rejects.toThrow("no");
    expect(() => refusing()).toThrow("no");
  });

  it("tries again after a file could not be fetched", async () => {
    const fetchFile = jest
      .fn<Promise<{ one: () => number }>, []>()
      .mockRejectedValueOnce(new Error("offline"))
      .mockResolvedValue({ one: () => 1 });
    const one = onDemand(fetchFile, "one");
    await expect(one()).rejects.toThrow("offline");
    await expect(one()).resolves.toBe(1);
  });
});
