import type { BatteryTest } from "../../src/store/battery";

/** A test of the battery of which only what matters is said. */
export const batteryTest = (said: Pick<BatteryTest, "test"> & Partial<BatteryTest>): BatteryTest => ({
  measure: null,
  quality: null,
  unit: null,
  direction: "higher",
  sides: 1,
  trials: 3,
  reduction: "best",
  lowest: null,
  highest: null,
  retestAfterWeeks: null,
  protocol: null,
  caution: null,
  ...said,
});
