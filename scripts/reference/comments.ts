/** What the doc comments in functions/ say beyond the metadata, which keeps their first paragraph and the arguments only. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";
import { worksheetName } from "../../functions";

const FOLDER = join(__dirname, "..", "..", "functions");

/** What a doc comment says beyond the metadata. */
export interface Comment {
  /** The paragraphs after the first: how the function decides. */
  rules: string[];
  /** What the function gives. */
  returns: string;
}

/** The doc comment of every worksheet function, by id. */
export function readComments(): Map<string, Comment> {
  const comments = new Map<string, Comment>();
  for (const file of readdirSync(FOLDER).filter((name) => name.endsWith(".ts"))) {
    const source = ts.createSourceFile(file, readFileSync(join(FOLDER, file), "utf8"), ts.ScriptTarget.Latest, true);
    source.forEachChild((node) => {
      if (!ts.isFunctionDeclaration(node) || node.name === undefined) return;
      const comment = ts.getJSDocCommentsAndTags(node).at(0)?.comment;
      const [, ...rules] = (ts.getTextOfJSDocComment(comment) ?? "").split(/\n\s*\n/);
      const returns = ts.getTextOfJSDocComment(ts.getJSDocReturnTag(node)?.comment) ?? "";
      comments.set(worksheetName(node.name.text), { rules: rules.map(oneLine), returns: oneLine(returns) });
    });
  }
  return comments;
}

/** The comment at the top of a family's file, "Title: what it is about." */
export function familyTitle(family: string): { title: string; about: string } {
  const text = readFileSync(join(FOLDER, `${family}.ts`), "utf8");
  const comment = /^\/\*\*\s*(.*?)\s*\*\//s.exec(text)?.[1] ?? "";
  const parts = /^([^:.]+)[:.]\s*(.*)$/.exec(oneLine(comment.replace(/\n\s*\*/g, " ")));
  if (!parts) throw new Error(`functions/${family}.ts opens without a comment "Title: what it is about."`);
  const [, title, about] = parts;
  return { title, about: about.charAt(0).toUpperCase() + about.slice(1) };
}

function oneLine(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}
