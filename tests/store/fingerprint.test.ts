import { fingerprint } from "../../src/store/fingerprint";

it("is FNV-1a, as its authors define it", () => {
  // FNV-1a 32 of "[]": check by hand, ((basis ^ 0x5b) * prime ^ 0x5d) * prime mod 2^32, with arbitrary precision below.
  const step = (value: bigint, byte: number): bigint => ((value ^ BigInt(byte)) * 16777619n) % 2n ** 32n;
  const forwards = step(step(2166136261n, 0x5b), 0x5d).toString(36);
  const backwards = step(step(2166136261n, 0x5d), 0x5b).toString(36);
  expect(fingerprint([])).toBe(`${forwards}-${backwards}`);
});

it("tells cells apart that differ in one place, a number from a text, and an empty cell from an empty text", () => {
  const all = [["a", 1], ["a", 2], ["a", "1"], [1, "a"], ["a", null], ["a", ""], ["a1"], ["å", 1]].map(fingerprint);
  expect(new Set(all).size).toBe(all.length);
  expect(fingerprint(["a", 1])).toBe(all[0]);
});
