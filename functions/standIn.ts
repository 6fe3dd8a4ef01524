/**
 * Stands in for the host's `CustomFunctions` where the functions run without the host: in the practice sheet, in scripts and
 * in tests. Same names, same error codes; the message stays readable.
 */
const ErrorCode = {
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  divisionByZero: "#DIV/0!",
  invalidNumber: "#NUM!",
  nullReference: "#NULL!",
} as const;

/** What a cell shows in place of an answer, with the sentence behind it. */
export class CellError extends Error {
  constructor(
    readonly code: string,
    message = "",
  ) {
    super(message);
    this.name = "CellError";
  }
}

/** Makes the stand-in the `CustomFunctions` of this page or process. */
export function standInForHost(): void {
  const standIn = { Error: CellError, ErrorCode, associate: () => undefined };
  (globalThis as { CustomFunctions?: unknown }).CustomFunctions = standIn;
}
