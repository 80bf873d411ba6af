import type { Book } from "../engine/book";
import { createDocument, documentWords } from "./document";
import { strict } from "./strict";

/** Requirement sets the host says it has, by name; a set is there up to its version. */
export type ApiSets = Readonly<Record<string, string>>;

/** All that is published today (application-specific requirement sets of the reference). */
export const newestSets: ApiSets = {
  ExcelApi: "1.20",
  CustomFunctionsRuntime: "1.5",
  SharedRuntime: "1.2",
  ImageCoercion: "1.1",
  KeyboardShortcuts: "1.1",
};

/** "1.10" is newer than "1.9". */
export function isUpTo(version: string, newest: string | undefined): boolean {
  if (newest === undefined) return false;
  const [major = 0, minor = 0] = version.split(".").map(Number);
  const [newestMajor = 0, newestMinor = 0] = newest.split(".").map(Number);
  return major < newestMajor || (major === newestMajor && minor <= newestMinor);
}

type Ready = { readonly host: string; readonly platform: string };

/** What is taken of a theme: colours, and whether they are dark. */
const lightTheme = {
  bodyBackgroundColor: "#FFFFFF",
  bodyForegroundColor: "#242424",
  controlBackgroundColor: "#FFFFFF",
  controlForegroundColor: "#242424",
  isDarkTheme: false,
} as const;

/** The `Office` of a page: the application around the workbook, and what an add-in may ask of it. */
export function createOffice(sets: ApiSets, book: Book, language: string) {
  const actions = new Map<string, (event: unknown) => unknown>();
  const ready: Ready = { host: "Excel", platform: "OfficeOnline" };
  let startupBehavior = "None";
  let visible = true;
  const visibilityHandlers = new Set<(message: { visibilityMode: string }) => void>();
  const show = (shown: boolean) => {
    visible = shown;
    for (const handler of visibilityHandlers) handler({ visibilityMode: shown ? "Taskpane" : "Hidden" });
  };

  const requirements = strict("Office.context.requirements", {
    isSetSupported: (name: string, version = "1.1"): boolean => isUpTo(String(version), sets[name]),
  });

  const context = strict("Office.context", {
    contentLanguage: language,
    displayLanguage: language,
    document: createDocument(book),
    diagnostics: { host: ready.host, platform: ready.platform, version: "16.0.0.0" },
    host: ready.host,
    // ASSUMPTION: the browser's storage needs no partition here, as there is one application.
    partitionKey: undefined,
    officeTheme: lightTheme,
    platform: ready.platform,
    requirements,
  });

  const office = strict("Office", {
    HostType: { Excel: "Excel", Word: "Word", PowerPoint: "PowerPoint", Outlook: "Outlook" },
    PlatformType: {
      PC: "PC",
      OfficeOnline: "OfficeOnline",
      Mac: "Mac",
      iOS: "iOS",
      Android: "Android",
      Universal: "Universal",
    },
    StartupBehavior: { none: "None", load: "Load" },
    VisibilityMode: { hidden: "Hidden", taskpane: "Taskpane" },
    ...documentWords,
    actions: strict("Office.actions", {
      associate(id: string, action: (event: unknown) => unknown): void {
        actions.set(id, action);
      },
    }),
    addin: strict("Office.addin", {
      getStartupBehavior: async () => startupBehavior,
      hide: async () => show(false),
      onVisibilityModeChanged: async (handler: (message: { visibilityMode: string }) => void) => {
        visibilityHandlers.add(handler);
        return async () => void visibilityHandlers.delete(handler);
      },
      setStartupBehavior: async (behavior: string) => {
        startupBehavior = behavior;
      },
      showAsTaskpane: async () => show(true),
    }),
    context,
    initialize: undefined as unknown,
    async onReady(callback?: (info: Ready) => unknown): Promise<Ready> {
      await callback?.(ready);
      return ready;
    },
  });

  return {
    office,
    /** Whether the add-in has its task pane shown. */
    isPaneShown: () => visible,
    /** Runs the action of a ribbon button, as a press of it does. Resolves when the action says it is done. */
    press(id: string): Promise<void> {
      const action = actions.get(id);
      if (!action) throw new Error(`No action is associated with "${id}".`);
      return new Promise((resolve, reject) => {
        try {
          const answer = action({ source: { id }, completed: resolve });
          if (answer instanceof Promise) answer.catch(reject);
        } catch (error) {
          reject(error);
        }
      });
    },
  };
}
