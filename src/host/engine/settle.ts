import type { ICommandService } from "@univerjs/core";
import { SetFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { TriggerCalculationController } from "@univerjs/sheets-formula";
import type { Book } from "./book";

/** The engine's private bookkeeping of pending calculations (pinned version; `innards.test.ts` fails if it moves). */
type Trigger = {
  _waitingCommandQueue: unknown[];
  _setTimeoutKey: ReturnType<typeof setTimeout>;
  _executingDirtyData: object;
  _executionInProgressParams: unknown;
  _startProgress(): void;
  _generateDirty(queue: unknown[]): object;
  _mergeDirty(a: object, b: object): object;
};

const triggerOf = (book: Book) => book.injector.get(TriggerCalculationController) as unknown as Trigger;

const longestCalculation = 60_000;

/**
 * Resolves when no calculation is queued or running. The engine waits 100 ms before it calculates; here it starts at
 * once, and the engine's own promise, which rejects when nothing is pending, is not used.
 */
export async function settle(book: Book): Promise<void> {
  const trigger = triggerOf(book);
  const commands: ICommandService = book.commands;
  for (let round = 0; round < 50; round += 1) {
    if (trigger._waitingCommandQueue.length === 0 && !trigger._executionInProgressParams) return;
    const finished = new Promise<void>((resolve) => {
      const finish = () => {
        listener.dispose();
        clearTimeout(limit);
        resolve();
      };
      const listener = book.api.getFormula().calculationEnd(finish);
      const limit = setTimeout(finish, longestCalculation);
    });
    if (!trigger._executionInProgressParams) {
      clearTimeout(trigger._setTimeoutKey);
      const dirty = trigger._mergeDirty(
        trigger._executingDirtyData,
        trigger._generateDirty(trigger._waitingCommandQueue),
      );
      trigger._executingDirtyData = dirty;
      trigger._waitingCommandQueue = [];
      commands.syncExecuteCommand(SetFormulaCalculationStartMutation.id, { ...dirty }, { onlyLocal: true });
    }
    await finished;
    while (trigger._executionInProgressParams) await new Promise<void>((resolve) => setTimeout(resolve, 0));
  }
}

/** Before the engine goes: no calculation begins any more, and none that runs wants to tell how far it is. */
export function stopCalculating(book: Book): void {
  const trigger = triggerOf(book);
  clearTimeout(trigger._setTimeoutKey);
  trigger._startProgress = () => {};
}
