/** The public interface: what the spreadsheet is told about the functions, against the functions themselves. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import Ajv from "ajv-draft-04";
import addFormats from "ajv-formats";
import { families, worksheetFunctions, worksheetName } from "../../functions";
import { catalogue } from "../../scripts/catalogue";
import { METADATA_FILE, metadataText } from "../../scripts/metadata";
import { BUILTINS } from "../data/builtins";

interface Parameter {
  name: string;
  description?: string;
  type: string;
  optional?: boolean;
}

interface FunctionMetadata {
  id: string;
  name: string;
  description?: string;
  parameters: Parameter[];
  result: { dimensionality?: string };
}

const { functions } = JSON.parse(readFileSync(METADATA_FILE, "utf8")) as { functions: FunctionMetadata[] };
const each = test.each(functions.map((metadata): [string, FunctionMetadata] => [metadata.id, metadata]));

describe("manifest/functions.json", () => {
  test("is what the generator makes of functions/", () => {
    expect(readFileSync(METADATA_FILE, "utf8")).toBe(metadataText());
  });

  test("fits the vendor's schema", () => {
    const validate = customFunctionsSchema();
    validate({ functions });
    expect(validate.errors ?? []).toEqual([]);
  });

  test("the schema refuses what it should", () => {
    const validate = customFunctionsSchema();
    expect(validate({ functions: [{ ...functions[0], id: "1" }] })).toBe(false);
  });

  test("holds every function of every family, once", () => {
    expect(functions.map(({ id }) => id).sort()).toEqual([...worksheetFunctions.keys()].sort());
    const exported = Object.values(families).flatMap((family) => Object.keys(family));
    expect(new Set(exported.map(worksheetName)).size).toBe(exported.length);
  });
});

describe("names", () => {
  each("%s is 3 to 24 capitals, the same as id and name", (id, { name }) => {
    expect(id).toMatch(/^[A-Z]{3,24}$/);
    expect(name).toBe(id);
  });

  each("%s is no built-in function of a spreadsheet", (id) => {
    expect(BUILTINS.has(id)).toBe(false);
  });

  each("%s does not read as an address of a cell, a row or a column", (id) => {
    // Three letters or fewer are a whole column; R, C and RC are the current row, column and cell.
    expect(id).not.toMatch(/^([A-Z]{1,3}|R?C?|R\d*C\d*|[A-Z]{1,3}\d+)$/);
  });

  test.each(Object.entries(families))("%s exports whole words, run together", (_, family) => {
    for (const name of Object.keys(family)) expect(name).toMatch(/^[a-z]+([A-Z][a-z]+)*$/);
  });
});

describe("descriptions", () => {
  each("%s is described, and so is every parameter, in one short line", (_, { description, parameters }) => {
    expect(description).toMatch(/^[A-Z].*\.$/);
    for (const parameter of parameters) {
      expect([parameter.name, parameter.description]).toEqual([parameter.name, expect.stringMatching(/^.{3,128}$/)]);
    }
  });

  test("what each gives is described", () => {
    const silent = catalogue().flatMap((family) => family.functions.filter(({ gives }) => gives.length < 3));
    expect(silent.map(({ id }) => id)).toEqual([]);
  });
});

describe("parameters", () => {
  each("%s takes units, and what is optional comes last", (_, { parameters }) => {
    const units = parameters.find(({ name }) => name === "units");
    expect(units).toMatchObject({ optional: true });
    const firstOptional = parameters.findIndex(({ optional }) => optional === true);
    expect(parameters.slice(firstOptional).every(({ optional }) => optional === true)).toBe(true);
  });

  each("%s takes any cell, so that numbers and text both work", (_, { parameters }) => {
    expect(parameters.filter(({ type }) => type !== "any").map(({ name }) => name)).toEqual([]);
  });

  each("%s has the same parameters in the code", (id, { parameters }) => {
    const run = worksheetFunctions.get(id)!;
    expect(run).toHaveLength(parameters.length);
    expect(parameterNames(run)).toEqual(parameters.map(({ name }) => name));
  });
});

function customFunctionsSchema() {
  const file = "build/json-schemas/teams/v1.30/MicrosoftTeams.schema.json";
  const folder = join(require.resolve("@microsoft/app-manifest/package.json"), "..");
  const schema = JSON.parse(readFileSync(join(folder, file), "utf8")) as { definitions: object };
  const ajv = new Ajv({ strict: false, allErrors: true });
  addFormats(ajv);
  return ajv.compile({ definitions: schema.definitions, allOf: [{ $ref: "#/definitions/extensionCustomFunctions" }] });
}

/** The parameters as the function declares them. */
function parameterNames(run: (...cells: never[]) => unknown): string[] {
  return /\(([^)]*)\)/
    .exec(run.toString())![1]
    .split(",")
    .map((name) => name.trim())
    .filter(Boolean);
}
