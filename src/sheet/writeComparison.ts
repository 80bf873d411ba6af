import { type Comparison, comparisonSetting, writtenComparison } from "../store/comparison";
import type { Deed } from "./deed";
import { trapHost } from "./hostRefusal";

/** Remembers in the workbook whom athletes are compared with. Two round trips. */
export const writeComparison = (comparison: Comparison): Promise<{ readonly deed: Deed }> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const { settings } = context.workbook;
      const setting = settings.getItemOrNullObject(comparisonSetting).load("value");
      await context.sync();
      const value: unknown = setting.isNullObject ? undefined : setting.value;
      settings.add(comparisonSetting, writtenComparison(comparison));
      await context.sync();
      const what = "Changed whom athletes are compared with.";
      return { deed: { what, steps: [{ kind: "restoreSetting", key: comparisonSetting, value }] } };
    }),
  );
