import { FunctionType } from "@univerjs/engine-formula";
import { IDescriptionService } from "@univerjs/sheets-formula";
import type { Host } from "../index";

/** What an add-in's manifest tells Excel, and this page has to know in its place. */
export const addIn = {
  pane: "taskpane-embedded.html",
  functions: "functions.json",
  namespace: "TAPELINE",
} as const;

type Functions = Parameters<Host["registerFunctions"]>[0];

/** Describes the add-in's custom functions to the workbook, and to the help that appears while a formula is typed. */
export async function describeFunctions(host: Host): Promise<void> {
  const response = await fetch(addIn.functions);
  if (!response.ok) throw new Error(`${addIn.functions} is not there: the add-in has not been built.`);
  const metadata: Functions = await response.json();
  host.registerFunctions(metadata, addIn.namespace);
  host.book.injector.get(IDescriptionService).registerDescriptions(
    metadata.functions.map(({ name, description = "", parameters }) => ({
      functionName: `${addIn.namespace}.${name}`,
      aliasFunctionName: "",
      functionType: FunctionType.User,
      description,
      abstract: description,
      functionParameter: parameters.map((parameter) => ({
        name: parameter.name,
        detail: parameter.description ?? "",
        example: parameter.dimensionality === "matrix" ? "A1:A3" : "A1",
        require: parameter.optional ? 0 : 1,
        repeat: parameter.repeating ? 1 : 0,
      })),
    })),
  );
}
