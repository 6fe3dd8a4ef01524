/**
 * The QUILT functions inside the practice sheet's formula engine. They behave as in the host: an argument left out and an
 * empty cell arrive as null, an error in an argument becomes the answer, and a range where one value is expected is
 * answered cell by cell.
 */
import { BooleanNumber, type Nullable } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  CELL_INVERTED_INDEX_CACHE,
  ErrorType,
  ErrorValueObject,
  FunctionType,
  type IFunctionInfo,
  NumberValueObject,
  StringValueObject,
  ValueObjectFactory,
} from "@univerjs/engine-formula";
import type { Cell, Value } from "../../functions/cells";
import { CellError, standInForHost } from "../../functions/standIn";
import { type QuiltFunction, quiltFunctions } from "./catalogue";

standInForHost();

/**
 * The engine's index of a column takes 0, an empty text and a blank cell for one value, and loses errors: it is not asked.
 * Nor is it kept: with every formula's answer it would look through all answers of the column before.
 */
CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
CELL_INVERTED_INDEX_CACHE.set = () => undefined;

/** Text in an array constant, such as {"1/4"}, stays text, as in the host: the engine would make a date of it. */
const create = ValueObjectFactory.create.bind(ValueObjectFactory);
ValueObjectFactory.create = (value, keepsText = typeof value === "string" && value.startsWith('"')) =>
  create(value, keepsText);

class EngineFunction extends BaseFunction {
  // Counting arguments is left to `calculate`, which can say what is wrong.
  override minParams = -1;
  override maxParams = -1;

  constructor(private readonly described: QuiltFunction) {
    super(described.name);
  }

  /** Text stays text: the engine would make a date of "1/4". */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  override calculate(...given: BaseValueObject[]): BaseValueObject {
    const most = this.described.arguments.length;
    if (given.length > most) {
      return sentence(ErrorType.VALUE, `${this.described.name} takes at most ${most} arguments, not ${given.length}`);
    }
    const { rows, columns } = this.size(given);
    if (rows === 1 && columns === 1) {
      const answer = this.answerAt(given, 0, 0);
      return Array.isArray(answer) ? this.table(answer) : answer;
    }
    const answers: BaseValueObject[][] = [];
    for (let row = 0; row < rows; row++) {
      const line: BaseValueObject[] = [];
      for (let column = 0; column < columns; column++) {
        const answer = this.answerAt(given, row, column);
        if (Array.isArray(answer)) return this.tableForEachCell();
        line.push(answer);
      }
      answers.push(line);
    }
    return this.table(answers);
  }

  /** Rows and columns of the answer where single values are given as ranges. */
  private size(given: BaseValueObject[]): { rows: number; columns: number } {
    const lifted = given.filter((_, index) => !this.described.arguments[index].range).filter(isArray);
    return {
      rows: Math.max(1, ...lifted.map((array) => array.getRowCount())),
      columns: Math.max(1, ...lifted.map((array) => array.getColumnCount())),
    };
  }

  private answerAt(given: BaseValueObject[], row: number, column: number): BaseValueObject | BaseValueObject[][] {
    const cells: Cell[] = [];
    for (const [index, argument] of this.described.arguments.entries()) {
      const cell = index < given.length ? readArgument(given[index], argument.range, row, column) : null;
      if (cell instanceof ErrorValueObject) return cell;
      cells.push(cell);
    }
    try {
      const answer = this.described.run(...cells) as Value | Value[][];
      return Array.isArray(answer) ? answer.map((line) => line.map(toEngine)) : toEngine(answer);
    } catch (thrown) {
      // eslint-disable-next-line @typescript-eslint/no-unsafe-enum-assignment -- the codes are the same texts in both
      if (thrown instanceof CellError) return sentence(thrown.code as ErrorType, thrown.message);
      console.error(thrown);
      return sentence(
        ErrorType.VALUE,
        `${this.described.name} failed; this is a fault of the function, not of the sheet`,
      );
    }
  }

  private tableForEachCell(): BaseValueObject {
    return sentence(
      ErrorType.VALUE,
      `${this.described.name} answers with a table, so each of its arguments must be one cell, not a range`,
    );
  }

  private table(rows: BaseValueObject[][]): BaseValueObject {
    return ArrayValueObject.create({
      calculateValueList: rows,
      rowCount: rows.length,
      columnCount: rows[0].length,
      unitId: this.unitId ?? "",
      sheetId: this.subUnitId ?? "",
      row: this.row,
      column: this.column,
    });
  }
}

type Constructor = new (name: string) => BaseFunction;

/** For the `function` option of the engine's plugin: a class and a name for each function. */
export const engineFunctions: [Constructor, string][] = quiltFunctions.map((described) => [
  class extends EngineFunction {
    constructor() {
      super(described);
    }
  },
  described.name,
]);

/** For the `description` option: what the list shows while a formula is typed. */
export const engineDescriptions: IFunctionInfo[] = quiltFunctions.map((described) => ({
  functionName: described.name,
  functionType: FunctionType.User,
  description: described.description,
  abstract: described.description,
  functionParameter: described.arguments.map((argument) => ({
    name: argument.name,
    detail: argument.description,
    example: "",
    require: argument.optional ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    repeat: BooleanNumber.FALSE,
  })),
}));

/** An argument as the function gets it, or the error that stands in it. */
function readArgument(given: BaseValueObject, range: boolean, row: number, column: number): Cell {
  if (!range) return readCell(isArray(given) ? repeated(given, row, column) : given);
  if (!isArray(given)) return given.isNull() ? null : wrap(readCell(given));
  const rows: Cell[][] = [];
  for (let r = 0; r < given.getRowCount(); r++) {
    const cells: Cell[] = [];
    for (let c = 0; c < given.getColumnCount(); c++) {
      const cell = readCell(given.get(r, c));
      if (cell instanceof ErrorValueObject) return cell;
      cells.push(cell);
    }
    rows.push(cells);
  }
  return rows;
}

function wrap(cell: Cell): Cell {
  return cell instanceof ErrorValueObject ? cell : [[cell]];
}

/** The cell that belongs to a place of the answer: one row, one column or one cell serves all; elsewhere there is none. */
function repeated(array: ArrayValueObject, row: number, column: number): Nullable<BaseValueObject> {
  const r = array.getRowCount() === 1 ? 0 : row;
  const c = array.getColumnCount() === 1 ? 0 : column;
  if (r >= array.getRowCount() || c >= array.getColumnCount()) {
    return sentence(ErrorType.NA, "The ranges given are not of the same size");
  }
  return array.get(r, c);
}

function readCell(value: Nullable<BaseValueObject>): Cell {
  if (value === null || value === undefined || value.isNull()) return null;
  if (value.isError()) return value;
  if (value.isLambda()) return sentence(ErrorType.VALUE, "A value or a cell is needed here, not a LAMBDA");
  return value.getValue();
}

function toEngine(value: Value): BaseValueObject {
  if (typeof value === "number") return NumberValueObject.create(value);
  if (typeof value === "boolean") return BooleanValueObject.create(value);
  return StringValueObject.create(value);
}

/** A cell error that carries its sentence through whatever formula it stands in. */
function sentence(code: ErrorType, message: string): ErrorValueObject {
  return ErrorValueObject.create(code, message);
}

function isArray(value: BaseValueObject): value is ArrayValueObject {
  return value.isArray();
}
