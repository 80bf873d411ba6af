import { say } from "../language/say";
import { type Comparison, comparisonSetting, mayReplaceComparison, writtenComparison } from "../store/comparison";
import type { Deed } from "./deed";
import { HostRefusal, trapHost } from "./hostRefusal";

/** Remembers in the workbook whom athletes are compared with. Two round trips. */
export const writeComparison = (comparison: Comparison): Promise<{ readonly deed: Deed }> =>
  trapHost(() =>
    Excel.run(async (context) => {
      const { settings } = context.workbook;
      const setting = settings.getItemOrNullObject(comparisonSetting).load("value");
      await context.sync();
      const value: unknown = setting.isNullObject ? undefined : setting.value;
      if (!mayReplaceComparison(value)) {
        throw new HostRefusal(
          "UnknownState",
          say`The comparison in this workbook was chosen in a newer version of the add-in.`,
        );
      }
      settings.add(comparisonSetting, writtenComparison(comparison));
      await context.sync();
      const what = say`Changed whom athletes are compared with.`;
      return { deed: { what, steps: [{ kind: "restoreSetting", key: comparisonSetting, value }] } };
    }),
  );
