import eslint from "@eslint/js";
import tseslint from "typescript-eslint";

/** The layers, from the inside out, and what each may not reach: see DEVELOPERS.md. */
const FORBIDDEN = {
  "src/math": ["functions", "pictures", "workbooks", "pane", "practice", "scripts", "tests"],
  functions: ["pictures", "workbooks", "pane", "practice", "scripts", "tests"],
  "src/pictures": ["functions", "workbooks", "pane", "practice", "scripts", "tests"],
  "src/workbooks": ["pane", "practice", "scripts", "tests"],
  "src/pane": ["practice", "scripts", "tests"],
  "src/practice": ["scripts", "tests"],
};

const layers = Object.entries(FORBIDDEN).map(([folder, layersAbove]) => ({
  files: [`${folder}/**/*.ts`],
  rules: {
    "no-restricted-imports": [
      "error",
      { patterns: [{ group: layersAbove.map((layer) => `**/${layer}/**`), message: "Imports point inward only." }] },
    ],
  },
}));

const quotient = ["floor", "ceil", "round"].map((property) => ({
  object: "Math",
  property,
  message: "A quotient of lengths is rounded in rounding.ts only, which forgives binary dust.",
}));

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "coverage/", "**/*.js", "**/*.cjs", "**/*.mjs"] },
  eslint.configs.recommended,
  tseslint.configs.strictTypeChecked,
  { languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } } },
  {
    rules: {
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true, allowBoolean: true }],
      "@typescript-eslint/no-unnecessary-condition": ["error", { allowConstantLoopConditions: true }],
      "@typescript-eslint/no-non-null-assertion": "off",
    },
  },
  {
    // Nothing turns text into script; tests try what must not succeed.
    ignores: ["tests/**"],
    rules: { "no-eval": "error", "no-implied-eval": "error", "no-new-func": "error", "no-script-url": "error" },
  },
  ...layers,
  {
    files: ["src/math/**/*.ts", "functions/**/*.ts"],
    ignores: ["src/math/rounding.ts", "src/math/cutplan/**"],
    rules: { "no-restricted-properties": ["error", ...quotient] },
  },
  {
    // The metadata generator knows only `any`; the door, functions/cells.ts, takes every cell as unknown.
    files: ["functions/**/*.ts"],
    rules: {
      "@typescript-eslint/no-explicit-any": "off",
      "@typescript-eslint/no-unsafe-return": "off",
    },
  },
);
