import { english, type Language, speak } from "./say";

/** The languages there are beside English, each fetched when it is wanted. */
const languages: Readonly<Record<string, () => Promise<Language>>> = {
  de: () => import("./german").then(({ german }) => german),
};

/**
 * Chooses the language of everything said from now on. To be done before the first screen is loaded: much is said once,
 * when a file is loaded.
 *
 * @param display language of the program's menus, as in BCP 47, e.g. "de-CH"; one we do not have gives English.
 * @param content language in which the workbook shows numbers, which has its own decimal mark.
 * @returns tag of the language chosen.
 */
export async function chooseLanguage(display: string, content = display): Promise<string> {
  const tag = display.toLowerCase().split("-")[0]!;
  // A catalogue that cannot be fetched must not keep the pane from coming up.
  const language = (await languages[tag]?.().catch(() => english)) ?? english;
  speak({ ...language, decimalMark: decimalMarkOf(content) });
  return language.tag;
}

function decimalMarkOf(tag: string): Language["decimalMark"] {
  try {
    return new Intl.NumberFormat(tag).format(1.5).includes(",") ? "," : ".";
  } catch {
    // A tag that is none.
    return english.decimalMark;
  }
}
