/** Formulas as the grid has them, and as spreadsheet files store them. */
import { stringifyTokens, tokenize, translateTokensToA1, translateTokensToR1C1 } from "@borgar/fx";
import { NEW_EXCEL_FUNCTIONS } from "@univerjs/engine-formula";
import { NAMESPACE } from "../catalogue";

/** A file marks a function of an add-in so: the namespace and the name follow. */
const ADD_IN = `_xldudf_${NAMESPACE}_`;

/** Newer functions of the program itself, and the names within LET and LAMBDA, carry marks of their own. */
const NEWER = "_xlfn.";
const NEWER_STILL = "_xlfn._xlws.";
const SINGLE = /^_xlfn\.SINGLE$/i;
const LOCAL_NAME = "_xlpm.";
const NEWER_FUNCTIONS = new Set([...Array.from(NEW_EXCEL_FUNCTIONS, String), "LET", "LAMBDA", "ISOMITTED"]);
const NEWER_STILL_FUNCTIONS = new Set(["FILTER", "SORT"]);

type Token = ReturnType<typeof tokenize>[number];

/** `=QUILT.CUTSQUARE(B2)` as a file stores it, without the equals sign. */
export function toFile(formula: string): string {
  const tokens = tokenize(formula);
  const locals = localNames(tokens);
  return join(
    tokens.filter(({ type }) => type !== "fx_prefix"),
    (token) => {
      const name = token.value.toUpperCase();
      if (isCall(token) && name.startsWith(`${NAMESPACE}.`)) return ADD_IN + name.slice(NAMESPACE.length + 1);
      if (token.type === "func" && NEWER_STILL_FUNCTIONS.has(name)) return NEWER_STILL + name;
      if (token.type === "func" && NEWER_FUNCTIONS.has(name)) return NEWER + name;
      if (token.type === "range_named" && locals.has(name)) return LOCAL_NAME + token.value;
      return token.value;
    },
  );
}

/** A formula of a file as it is typed, with the equals sign. A call may name the workbook of the add-in before it. */
export function fromFile(stored: string): string {
  const formula = outsideText(stored, withoutBooks);
  const tokens = tokenize(`=${formula.replace(/^=/, "")}`);
  return join(
    // The mark @ takes one cell of a range, which a call of ours does by itself. Files may keep it as a function.
    tokens.filter(
      ({ value }, index) =>
        !(value === "@" && isAddIn(tokens[index + 1])) && !(SINGLE.test(value) && isAddIn(tokens[index + 2])),
    ),
    (token) => {
      if (isAddIn(token)) return `${NAMESPACE}.${token.value.slice(ADD_IN.length).toUpperCase()}`;
      if (!isCall(token)) return token.value;
      return token.value.replace(/^_xlfn\.(_xlws\.)?/i, "").replace(/^_xlpm\./i, "");
    },
  );
}

/** A formula that was filled from its cell into others, where references without dollar signs move along. */
export interface Filled {
  /** How many references it holds. */
  references: number;
  /** As it reads in another cell. */
  into(cell: string): string;
}

export function filledFrom(cell: string, formula: string): Filled {
  const tokens = translateTokensToR1C1(tokenize(formula), cell);
  return {
    references: tokens.filter(({ type }) => type.startsWith("range")).length,
    into: (other) => stringifyTokens(translateTokensToA1(tokens, other, { wrapEdges: false })),
  };
}

/** Whether a formula calls one of the QUILT functions. */
export function callsQuilt(formula: string): boolean {
  return tokenize(formula).some((token) => isCall(token) && token.value.toUpperCase().startsWith(`${NAMESPACE}.`));
}

function isAddIn(token: Token | undefined): boolean {
  return token !== undefined && isCall(token) && token.value.toUpperCase().startsWith(ADD_IN.toUpperCase());
}

/** A function's name; before a space and a bracket it reads like a name of a range. */
function isCall(token: Token): boolean {
  return token.type === "func" || token.type === "range_named";
}

function join(tokens: Token[], write: (token: Token) => string): string {
  return tokens.map(write).join("");
}

/** Takes the workbook of the add-in away from before its functions: `'Name of a file'!` or `[1]!`. */
function withoutBooks(formula: string): string {
  const pieces = formula.split(/!(?=_xldudf_)/i);
  const last = pieces.pop() ?? "";
  return pieces.map((piece) => withoutBook(piece) ?? `${piece}!`).join("") + last;
}

/** A piece of a formula without the workbook at its end; undefined where there is none. */
function withoutBook(piece: string): string | undefined {
  if (!piece.endsWith("'")) return /\[\d+\]$/.test(piece) ? piece.slice(0, piece.lastIndexOf("[")) : undefined;
  // From behind, so that many apostrophes are walked over once; two in a row are part of the name.
  let start = piece.length - 2;
  while (start >= 0 && (piece[start] !== "'" || piece[start - 1] === "'")) start -= piece[start] === "'" ? 2 : 1;
  return start < 0 ? undefined : piece.slice(0, start);
}

/** Changes a formula outside the texts in quotes. */
function outsideText(formula: string, change: (text: string) => string): string {
  return formula
    .split(/("(?:[^"]|"")*")/)
    .map((text, index) => (index % 2 === 0 ? change(text) : text))
    .join("");
}

/** Names that LET and LAMBDA give to values, in capitals. */
function localNames(tokens: Token[]): Set<string> {
  const names = new Set<string>();
  const calls: { name: string; argument: number }[] = [];
  const plain = tokens.filter(({ type }) => type !== "whitespace");
  plain.forEach((token, index) => {
    const call = calls.at(-1);
    if (token.value === "(") calls.push({ name: plain[index - 1].value.toUpperCase(), argument: 0 });
    else if (token.value === ")") calls.pop();
    else if (token.value === "," && call) call.argument++;
    else if (token.type === "range_named" && plain[index + 1]?.value === ",") {
      if (call?.name === "LAMBDA" || (call?.name === "LET" && call.argument % 2 === 0))
        names.add(token.value.toUpperCase());
    }
  });
  return names;
}
