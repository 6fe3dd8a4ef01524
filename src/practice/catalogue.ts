/** The QUILT functions as a person meets them: names, arguments and what each is for. */
import metadata from "../../manifest/functions.json";
import { worksheetFunctions, type WorksheetFunction } from "../../functions";

export const NAMESPACE = "QUILT";

export interface Argument {
  name: string;
  description: string;
  optional: boolean;
  /** Takes a whole range. Others take one value, and answer for each cell where they are given a range. */
  range: boolean;
}

export interface QuiltFunction {
  /** As typed in a cell, such as QUILT.CUTSQUARE. */
  name: string;
  description: string;
  arguments: Argument[];
  run: WorksheetFunction;
}

interface Metadata {
  id: string;
  description?: string;
  parameters: { name: string; description?: string; optional?: boolean; dimensionality?: string }[];
}

/** Every function that the add-in registers, in the order of the reference. */
export const quiltFunctions: readonly QuiltFunction[] = describeAll(metadata.functions);

function describeAll(described: Metadata[]): QuiltFunction[] {
  const byId = new Map(described.map((entry) => [entry.id, entry]));
  return [...worksheetFunctions].map(([id, run]) => {
    const entry = byId.get(id);
    if (!entry) throw new Error(`${id} is missing from manifest/functions.json: run npm run metadata`);
    return {
      name: `${NAMESPACE}.${id}`,
      description: entry.description ?? "",
      arguments: entry.parameters.map((parameter) => ({
        name: parameter.name,
        description: parameter.description ?? "",
        optional: parameter.optional ?? false,
        range: parameter.dimensionality === "matrix",
      })),
      run,
    };
  });
}
