/**
 * Gathers what is known of each function from its one source: the family and the result from the doc comments in functions/,
 * the arguments from the metadata, the examples from the check values, worked out by the function itself.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { families, worksheetFunctions, worksheetName } from "../functions";
import { standInForHost } from "../functions/standIn";
import type { Example, Family, FunctionEntry, Shown } from "../src/pane/catalogue";
import type { Case } from "../tests/cases";
import { cases } from "../tests/cases/index";
import { metadataText } from "./metadata";

export const NAMESPACE = "QUILT";

interface FunctionMetadata {
  id: string;
  description: string;
  parameters: { name: string; description: string; optional?: boolean }[];
}

/** Every family with its functions, in the order of functions/index.ts. */
export function catalogue(): Family[] {
  standInForHost();
  const metadata = (JSON.parse(metadataText()) as { functions: FunctionMetadata[] }).functions;
  return Object.entries(families).map(([name, members]) => {
    const source = familySource(name);
    const entries = Object.keys(members).map((member) => {
      const found = metadata.find(({ id }) => id === worksheetName(member));
      if (!found) throw new Error(`functions/${name}.ts exports ${member}, which is no @customfunction`);
      return functionEntry(found, resultText(source, member), cases[name] ?? []);
    });
    return { name, ...familyTitle(source), functions: entries };
  });
}

/** The formula that calls a function with these cells; null is an argument left out. */
export function formula(id: string, cells: readonly unknown[]): string {
  const last = cells.findLastIndex((cell) => cell !== null && cell !== undefined);
  return `=${NAMESPACE}.${id}(${cells
    .slice(0, last + 1)
    .map(argument)
    .join(", ")})`;
}

function argument(cell: unknown): string {
  if (Array.isArray(cell)) {
    const rows = cell as unknown[][];
    return `{${rows.map((row) => row.map((one) => argument(one ?? "")).join(",")).join(";")}}`;
  }
  if (typeof cell === "string") return `"${cell.replaceAll('"', '""')}"`;
  if (typeof cell === "boolean") return String(cell).toUpperCase();
  return typeof cell === "number" ? String(cell) : "";
}

function functionEntry(metadata: FunctionMetadata, gives: string, rows: Case[]): FunctionEntry {
  return {
    id: metadata.id,
    description: metadata.description,
    gives,
    parameters: metadata.parameters.map(({ name, description, optional = false }) => ({ name, description, optional })),
    examples: examples(rows.filter((row) => row.call === metadata.id && row.fails === undefined)),
  };
}

/** The check values that carry a label, or else the first one. */
function examples(rows: Case[]): Example[] {
  const labeled = rows.filter((row) => row.example !== undefined);
  return (labeled.length > 0 ? labeled : rows.slice(0, 1)).map((row) => ({
    label: row.example ?? "",
    formula: formula(row.call, row.cells),
    shows: worksheetFunctions.get(row.call)!(...row.cells) as Shown | Shown[][],
  }));
}

function familySource(name: string): ts.SourceFile {
  const file = join(__dirname, "..", "functions", `${name}.ts`);
  return ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.ES2022, true);
}

/** The comment at the top of a family's file, "Title: what it is about." */
function familyTitle(source: ts.SourceFile): { title: string; about: string } {
  const comment = /^\/\*\*\s*(.*?)\s*\*\//s.exec(source.text)?.[1]?.replace(/\s*\n\s*\*\s*/g, " ");
  const parts = /^([^:.]+)[:.]\s*(.*)$/s.exec(comment ?? "");
  if (!parts) throw new Error(`${source.fileName} opens without "Title: about."`);
  const [, title, about] = parts;
  return { title, about: about.charAt(0).toUpperCase() + about.slice(1) };
}

/** What the function's doc comment says it returns. */
function resultText(source: ts.SourceFile, name: string): string {
  const node = source.statements.find(
    (statement): statement is ts.FunctionDeclaration =>
      ts.isFunctionDeclaration(statement) && statement.name?.text === name,
  );
  const text = node && ts.getTextOfJSDocComment(ts.getJSDocReturnTag(node)?.comment);
  return text?.replace(/\s+/g, " ").trim() ?? "";
}
