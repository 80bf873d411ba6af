import type { ICommandService as Commands, IMutationInfo, Injector, Univer, Workbook, Worksheet } from "@univerjs/core";
import { ICommandService, IUndoRedoService, IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import { IFormulaDependencyGenerator, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { SetWorksheetColumnCountCommand, SetWorksheetRowCountCommand } from "@univerjs/sheets";
import { Bindings } from "./bindings";
import { Changes } from "./changes";
import { Charts } from "./charts";
import { CircularReferences } from "./circular";
import { Comments } from "./comments";
import { ConditionalFormats } from "./conditionalFormats";
import type { Engine } from "./createEngine";
import { CustomFunctions } from "./customFunctions";
import { Filters } from "./filters";
import { skipSearchForFormulas } from "./formulaSearch";
import { Formulas } from "./formulas";
import { NamedStyles } from "./namedStyles";
import { Names } from "./names";
import { PageSetups } from "./pageSetup";
import { Protection } from "./protection";
import { settle, stopCalculating } from "./settle";
import { State } from "./state";
import { Tables } from "./tables";

/** The open workbook: the engine's services, found once, and what the host adds to them. */
export class Book {
  readonly univer: Univer;
  readonly api: FUniver;
  readonly injector: Injector;
  readonly commands: Commands;
  readonly workbook: Workbook;
  /** Id of the sheet that was copied last. */
  lastCopiedSheet = "";
  readonly tables: Tables;
  readonly names: Names;
  readonly namedStyles: NamedStyles;
  readonly filters: Filters;
  readonly pageSetups: PageSetups;
  readonly charts: Charts;
  readonly conditionalFormats: ConditionalFormats;
  readonly circular: CircularReferences;
  readonly functions: CustomFunctions;
  readonly state = new State();
  readonly protection = new Protection();
  readonly #restoreSearch: () => void;
  #isClosed = false;
  readonly formulas: Formulas;
  readonly changes: Changes;
  readonly bindings: Bindings;
  readonly comments: Comments;

  constructor({ univer, api }: Engine) {
    this.univer = univer;
    this.api = api;
    this.injector = univer.__getInjector();
    this.commands = this.injector.get(ICommandService);
    const workbook = this.injector
      .get(IUniverInstanceService)
      .getCurrentUnitOfType<Workbook>(UniverInstanceType.UNIVER_SHEET);
    if (!workbook) throw new Error("The engine has no workbook open.");
    this.workbook = workbook;
    this.tables = new Tables(this);
    this.names = new Names(this);
    this.namedStyles = new NamedStyles(this);
    this.filters = new Filters(this);
    this.pageSetups = new PageSetups(this);
    this.charts = new Charts(this);
    this.conditionalFormats = new ConditionalFormats(this);
    this.circular = new CircularReferences(this);
    this.functions = new CustomFunctions(this);
    this.#restoreSearch = skipSearchForFormulas(this);
    this.formulas = new Formulas(this);
    this.changes = new Changes(this);
    this.bindings = new Bindings(this);
    this.comments = new Comments(this);
  }

  get id(): string {
    return this.workbook.getUnitId();
  }

  worksheet(sheetId: string): Worksheet {
    const sheet = this.workbook.getSheetBySheetId(sheetId);
    if (!sheet) throw new Error("The sheet is gone.");
    return sheet;
  }

  /** Runs a command of the engine; a command that does nothing is a fault of ours. */
  run(command: string, params: object): void {
    if (this.commands.syncExecuteCommand(command, params) === false) throw new Error(`The engine refused ${command}.`);
  }

  /** Runs mutations of the engine that no command of its own covers, as one step that can be undone. */
  undoable(subUnitId: string, redos: readonly IMutationInfo[], undos: readonly IMutationInfo[]): void {
    const placed = (mutations: readonly IMutationInfo[]) =>
      mutations.map(({ id, params }) => ({ id, params: { unitId: this.id, subUnitId, ...params } }));
    for (const { id, params } of placed(redos)) this.run(id, params);
    this.injector
      .get(IUndoRedoService)
      .pushUndoRedo({ unitID: this.id, redoMutations: placed(redos), undoMutations: placed(undos) });
  }

  /** A sheet of the engine is smaller than Excel's until something is written further out. */
  growTo(sheetId: string, rowCount: number, columnCount: number): void {
    const sheet = this.worksheet(sheetId);
    const place = { unitId: this.id, subUnitId: sheetId };
    if (sheet.getRowCount() < rowCount) {
      this.run(SetWorksheetRowCountCommand.id, { ...place, rowCount: rowCount + 100 });
    }
    if (sheet.getColumnCount() < columnCount) {
      this.run(SetWorksheetColumnCountCommand.id, { ...place, columnCount: columnCount + 10 });
    }
  }

  /**
   * Reads and counts every formula again: what a name or a function means has changed. The engine remembers formulas
   * as it once read them (private, pinned version; `innards.test.ts` fails if it moves).
   */
  recalculate(): void {
    const generator = this.injector.get(IFormulaDependencyGenerator) as unknown as {
      _disposeByUnitId(unitId: string): void;
    };
    generator._disposeByUnitId(this.id);
    this.commands.syncExecuteCommand(SetTriggerFormulaCalculationStartMutation.id, {
      commands: [],
      forceCalculation: true,
    });
  }

  /** Resolves when every formula has its value. */
  async settle(): Promise<void> {
    await settle(this);
    await this.circular.update();
  }

  /** Closes the workbook: what listens stops, and the engine with its timers ends. It may be closed twice. */
  dispose(): void {
    if (this.#isClosed) return;
    this.#isClosed = true;
    stopCalculating(this);
    this.#restoreSearch();
    this.functions.dispose();
    this.changes.dispose();
    this.formulas.dispose();
    this.tables.dispose();
    this.univer.dispose();
  }
}
