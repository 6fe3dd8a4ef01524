/** The guides as pages for a release: the Markdown files of the project, each in its place, with links that still lead on. */
import { readdirSync, readFileSync } from "node:fs";
import { join, posix } from "node:path";
import { Marked, type Tokens } from "marked";

const ROOT = join(__dirname, "../..");

/** The page that the first page of a release leads to. */
export const FIRST_GUIDE = "docs/README.html";

/** Every file of the guides, by its path in their folder. */
export function guideFiles(): Map<string, string | Buffer> {
  const docs = readdirSync(join(ROOT, "docs"), { recursive: true, encoding: "utf8" }).map((name) =>
    posix.join("docs", name.replaceAll("\\", "/")),
  );
  const texts = ["README.md", "DEVELOPERS.md", "CHANGELOG.md", ...docs.filter((name) => name.endsWith(".md"))];
  const pictures = docs.filter((name) => /\.(png|svg)$/.test(name));
  const files = new Map<string, string | Buffer>();
  for (const name of texts) files.set(pageName(name), guidePage(name, readFileSync(join(ROOT, name), "utf8")));
  for (const name of pictures) files.set(name, readFileSync(join(ROOT, name)));
  files.set("guides.css", readFileSync(join(__dirname, "guides.css")));
  return files;
}

/** A guide as a page without scripts, which stands one folder below the other pages of the release. */
export function guidePage(name: string, markdown: string): string {
  const up = "../".repeat(name.split("/").length - 1);
  const title = /^# (.*)$/m.exec(markdown)?.[1] ?? "Guide";
  return plainPage(`${escaped(plain(title))} · Piecewise`, {
    up: `${up}../`,
    styles: [`${up}../pane.css`, `${up}guides.css`],
    kind: "about-page guide",
    body: `<nav aria-label="Piecewise"><a href="${up}../index.html">Piecewise</a> · <a href="${up}${FIRST_GUIDE}">Guides</a> · <a href="${up}docs/reference/README.html">All functions</a></nav>
    <main>
${written(markdown)}
    </main>`,
  });
}

/** A page without scripts; `up` leads to the first page's folder. */
export function plainPage(
  title: string,
  { up, styles, kind, body }: { up: string; styles: readonly string[]; kind: string; body: string },
): string {
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'" />
    <meta name="color-scheme" content="light dark" />
    <title>${title}</title>
    <link rel="icon" href="${up}icons/icon-32.png" />
    ${styles.map((style) => `<link rel="stylesheet" href="${style}" />`).join("\n    ")}
  </head>
  <body class="${kind}">
    ${body}
  </body>
</html>
`;
}

function written(markdown: string): string {
  const taken = new Set<string>();
  const marked = new Marked({
    renderer: {
      heading({ tokens, depth, text }) {
        const id = anchor(plain(text), taken);
        return `<h${depth} id="${id}">${this.parser.parseInline(tokens)}</h${depth}>\n`;
      },
      table(token: Tokens.Table) {
        const row = (cells: Tokens.TableCell[]) => `<tr>${cells.map((cell) => this.tablecell(cell)).join("")}</tr>\n`;
        const head = `<thead>${row(token.header)}</thead>`;
        // Wide tables scroll by themselves, and the keyboard reaches them.
        return `<div class="table" tabindex="0" role="group" aria-label="Table">\n<table>\n${head}<tbody>${token.rows.map(row).join("")}</tbody>\n</table>\n</div>\n`;
      },
      checkbox: () => "☐ ",
      code({ text }) {
        return `<pre><code>${escaped(text)}</code></pre>\n`;
      },
    },
    walkTokens(token) {
      if (token.type === "link") token.href = (token.href as string).replace(/^(?!\w+:)([^#]*)\.md(?=#|$)/, "$1.html");
    },
  });
  return marked.parse(markdown.replace(/^<!--.*?-->\n/gms, ""), { async: false });
}

function pageName(name: string): string {
  return name.replace(/\.md$/, ".html");
}

/** The name under which links reach a heading, as code hosts make it. */
function anchor(heading: string, taken: Set<string>): string {
  const base = heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\- _]/gu, "")
    .replaceAll(" ", "-");
  let id = base;
  for (let again = 1; taken.has(id); again++) id = `${base}-${again}`;
  taken.add(id);
  return id;
}

/** A heading without its marks. */
function plain(heading: string): string {
  return heading.replace(/[`*]/g, "").replace(/\[([^\]]*)\]\([^)]*\)/g, "$1");
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
}
