import type { Book } from "../../engine/book";
import { refuse } from "../errors";
import { type ProxyClass, proxyClass } from "../proxies/proxyClass";

/** What the application does to the batch it is called in. */
export type ApplicationTarget = { readonly book: Book; suspendCalculation(): void };

export const Application: ProxyClass<Excel.Application, ApplicationTarget> = proxyClass<
  Excel.Application,
  ApplicationTarget
>("Application", {
  scalars: {
    calculationEngineVersion: { get: () => 191_029 },
    calculationMode: {
      get: () => "Automatic",
      set: (_target, mode) => {
        if (mode !== "Automatic") {
          refuse("NotImplemented", "The embedded host always calculates by itself (Application.calculationMode).");
        }
      },
    },
    calculationState: { get: () => "Done" },
    decimalSeparator: { get: () => "." },
    thousandsSeparator: { get: () => "," },
    useSystemSeparators: { get: () => true },
  },
  objects: { cultureInfo: { of: () => CultureInfo, at: (target) => target } },
  methods: {
    // Recalculated is what changed; nothing else can have another value, as there are no volatile functions of ours.
    calculate() {},
    suspendApiCalculationUntilNextSync: (target) => target.suspendCalculation(),
    // Drawing follows a batch anyway.
    suspendScreenUpdatingUntilNextSync() {},
  },
});

export const CultureInfo: ProxyClass<Excel.CultureInfo, unknown> = proxyClass<Excel.CultureInfo, unknown>(
  "CultureInfo",
  {
    scalars: { name: { get: () => "en-US" } },
    objects: {
      datetimeFormat: { of: () => DatetimeFormatInfo, at: (target) => target },
      numberFormat: { of: () => NumberFormatInfo, at: (target) => target },
    },
  },
);

export const NumberFormatInfo: ProxyClass<Excel.NumberFormatInfo, unknown> = proxyClass<
  Excel.NumberFormatInfo,
  unknown
>("NumberFormatInfo", {
  scalars: {
    currencySymbol: { get: () => "$" },
    numberDecimalSeparator: { get: () => "." },
    numberGroupSeparator: { get: () => "," },
  },
});

export const DatetimeFormatInfo: ProxyClass<Excel.DatetimeFormatInfo, unknown> = proxyClass<
  Excel.DatetimeFormatInfo,
  unknown
>("DatetimeFormatInfo", {
  scalars: {
    dateSeparator: { get: () => "/" },
    longDatePattern: { get: () => "dddd, MMMM d, yyyy" },
    longTimePattern: { get: () => "h:mm:ss tt" },
    shortDatePattern: { get: () => "M/d/yyyy" },
    timeSeparator: { get: () => ":" },
  },
});

export const Runtime: ProxyClass<Excel.Runtime, Book> = proxyClass<Excel.Runtime, Book>("Runtime", {
  scalars: {
    enableEvents: {
      get: (book) => book.changes.enabled,
      set: (book, enabled) => {
        book.changes.enabled = enabled;
      },
    },
  },
});
