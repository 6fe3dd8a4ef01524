/**
 * Tables that shrink. The engine works out what reads a table's new cells, but nothing that reads the cells which the table
 * has given up: a sum below it would keep its old value.
 */
import { CommandType, ICommandService, type Injector, type IRange } from "@univerjs/core";
import { SetArrayFormulaDataMutation, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";

interface Filled {
  unitId: string;
  sheetId: string;
  range: IRange;
}

/** The ranges of all tables, as the engine tells them, by the cell that each starts in. */
type Told = Record<string, Record<string, Record<number, Record<number, IRange | null> | null> | null> | null>;

/** Has the cells worked out that read what tables have given up, from now on. */
export function followTables(injector: Injector): void {
  const commands = injector.get(ICommandService);
  let filled = new Map<string, Filled>();
  commands.onCommandExecuted(({ id, type, params }) => {
    if (type !== CommandType.MUTATION || id !== SetArrayFormulaDataMutation.id) return;
    const before = filled;
    filled = tablesIn((params as { arrayFormulaRange: Told }).arrayFormulaRange);
    const dirtyRanges = [...before].flatMap(([home, table]) => (covers(filled.get(home), table) ? [] : [table]));
    if (dirtyRanges.length > 0)
      void commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, { dirtyRanges }, { onlyLocal: true });
  });
}

function tablesIn(told: Told): Map<string, Filled> {
  const tables = new Map<string, Filled>();
  for (const [unitId, sheets] of Object.entries(told))
    for (const [sheetId, rows] of Object.entries(sheets ?? {}))
      for (const [row, columns] of Object.entries(rows ?? {}))
        for (const [column, range] of Object.entries(columns ?? {}))
          if (range) tables.set([unitId, sheetId, row, column].join(), { unitId, sheetId, range: { ...range } });
  return tables;
}

function covers(now: Filled | undefined, { range }: Filled): boolean {
  return now !== undefined && now.range.endRow >= range.endRow && now.range.endColumn >= range.endColumn;
}
