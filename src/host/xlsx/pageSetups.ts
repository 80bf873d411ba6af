/** Words of the API and of the file for the same settings of a page (ECMA-376 part 1, 18.18.5, 18.18.51, 18.18.60). */
export const printComments = { NoComments: "none", EndSheet: "atEnd", InPlace: "asDisplayed" } as const;
export const printErrors = { AsDisplayed: "displayed", Blank: "blank", Dash: "dash", NotAvailable: "NA" } as const;
export const printOrders = { DownThenOver: "downThenOver", OverThenDown: "overThenDown" } as const;
export const orientations = { Portrait: "portrait", Landscape: "landscape" } as const;

/** Names the file keeps for what a sheet prints. */
export const printAreaName = "_xlnm.Print_Area";
export const printTitlesName = "_xlnm.Print_Titles";

/** The elements of headers and footers, by the pages they are for. */
export const headerElements = {
  odd: ["oddHeader", "oddFooter"],
  even: ["evenHeader", "evenFooter"],
  first: ["firstHeader", "firstFooter"],
} as const;
