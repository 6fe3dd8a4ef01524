/** The type checker's word on mutants that no test noticed: what it refuses could not be built at all. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { type Mutant, ROOT } from "./sandbox";

/** Keeps one program, in which one file at a time carries a mutant. */
export class TypeChecker {
  private readonly service: ts.LanguageService;
  private readonly texts = new Map<string, { text: string; version: number }>();

  constructor() {
    const { config } = ts.readConfigFile(join(ROOT, "tsconfig.json"), (path) => ts.sys.readFile(path)) as {
      config: object;
    };
    const { options, fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, ROOT);
    const mathematics = fileNames.filter((name) => name.includes("/src/math/"));
    this.service = ts.createLanguageService({
      fileExists: (path) => ts.sys.fileExists(path),
      readFile: (path) => ts.sys.readFile(path),
      // A name that a mutant leaves unused is no mistake of types.
      getCompilationSettings: () => ({ ...options, noUnusedLocals: false, noUnusedParameters: false }),
      getScriptFileNames: () => mathematics,
      getScriptVersion: (name) => String(this.texts.get(name)?.version ?? 0),
      getScriptSnapshot: (name) => {
        const text = this.texts.get(name)?.text ?? ts.sys.readFile(name);
        return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
      },
      getCurrentDirectory: () => ROOT,
      getDefaultLibFileName: ts.getDefaultLibFilePath,
    });
  }

  /** Whether the file with this mutant in it has a mistake of types. */
  refuses({ file, start, end, replacement }: Mutant): boolean {
    const path = join(ROOT, "src/math", file);
    const clean = readFileSync(path, "utf8");
    const set = (text: string) => this.texts.set(path, { text, version: (this.texts.get(path)?.version ?? 0) + 1 });
    set(clean.slice(0, start) + replacement + clean.slice(end));
    const refused = this.service.getSemanticDiagnostics(path).length > 0;
    set(clean);
    return refused;
  }
}
