/** Writes the pane page. The whole list stands in the page itself, so that it can be read before any script has run. */
import type { Example, Family, FunctionEntry, ParameterEntry, Shown } from "./catalogue";

/** The pane page as HTML, with office.js loaded from the given address. */
export function panePage(families: readonly Family[], officeScript: string): string {
  const count = families.reduce((sum, family) => sum + family.functions.length, 0);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>Piecewise: quilting functions</title>
<link rel="icon" href="icons/icon-32.png">
<link rel="stylesheet" href="pane.css">
<script src="${escaped(officeScript)}"></script>
<script defer src="functions.js"></script>
<script defer src="pane.js"></script>
</head>
<body>
<header>
<h1>Quilting functions</h1>
<p>Type <code>=QUILT.</code> in a cell and pick one. A length is a number, such as 3.5, or text, such as <code>"3 1/2"</code> or <code>"7.5 cm"</code>.</p>
<p id="outside" hidden>This page is not open in a spreadsheet. The add-in’s button there opens it beside your sheet.</p>
</header>
<main>
<search>
<label for="find">Find a function</label>
<input id="find" type="search" autocomplete="off" spellcheck="false" aria-describedby="found">
<p id="found" role="status">${countText(count)}</p>
</search>
${families.map(familySection).join("\n")}
</main>
<footer><a href="about.html">Help, privacy and terms</a></footer>
</body>
</html>
`;
}

/** How many functions the list shows. */
export function countText(count: number): string {
  return count === 0 ? "No function has these words." : count === 1 ? "1 function" : `${count} functions`;
}

function familySection({ name, title, about, functions }: Family): string {
  return `<section aria-labelledby="family-${escaped(name)}">
<h2 id="family-${escaped(name)}">${escaped(title)}</h2>
${about === "" ? "" : `<p>${escaped(about)}</p>\n`}${functions.map(functionDetails).join("\n")}
</section>`;
}

/** The list shows the first sentence; the rest comes with the arguments. */
function functionDetails({ id, description, rules, gives, parameters, examples }: FunctionEntry): string {
  const [first, ...others] = description.split(/(?<=\.) (?=[A-Z])/);
  const more = [others.join(" "), ...rules].filter((paragraph) => paragraph !== "");
  return `<details id="${escaped(id)}">
<summary><span class="name">${escaped(id)}</span> <span class="says">${escaped(first)}</span></summary>
${more.map((paragraph) => `<p>${escaped(paragraph)}</p>\n`).join("")}<h3>Gives</h3>
<p>${escaped(gives)}</p>
<h3>Arguments</h3>
<dl>
${parameters.map(parameterTerm).join("\n")}
</dl>
<h3>${examples.length > 1 ? "Examples" : "Example"}</h3>
${examples.map(exampleText).join("\n")}
</details>`;
}

function parameterTerm({ name, description, optional }: ParameterEntry): string {
  const note = optional ? " <i>optional</i>" : "";
  return `<dt>${escaped(name)}${note}</dt><dd>${escaped(description)}</dd>`;
}

function exampleText({ label, formula, shows }: Example): string {
  const text = label === "" ? "" : `<p>${escaped(label)}</p>\n`;
  return `${text}<pre class="formula"><code>${escaped(formula)}</code></pre>
${Array.isArray(shows) ? table(formula, shows) : `<p class="shows">shows <b>${escaped(cellText(shows))}</b></p>`}`;
}

/** A spilled table. It may be wider than the pane, so it scrolls by itself, with the arrow keys too. */
function table(formula: string, rows: Shown[][]): string {
  const cell = (value: Shown, tag: string): string => `<${tag}>${escaped(cellText(value))}</${tag}>`;
  // The corner of a table with headings on two sides is empty, and no heading.
  const heading = (value: Shown): string => cell(value, value === "" ? "td" : "th");
  const [first = [], ...others] = rows;
  const head = first.every((value) => typeof value === "string");
  const line = (cells: string[]): string => `<tr>${cells.join("")}</tr>`;
  const body = (head ? others : rows).map((row) => line(row.map((value) => cell(value, "td")))).join("\n");
  return `<div class="wide" role="region" tabindex="0" aria-label="${escaped(`What ${formula} shows`)}">
<table>
${head ? `<thead>${line(first.map(heading))}</thead>\n` : ""}<tbody>${body}</tbody>
</table>
</div>`;
}

/** A value as a cell of usual width shows it. */
function cellText(value: Shown): string {
  if (typeof value === "number") return String(Number(value.toFixed(4)));
  return typeof value === "boolean" ? String(value).toUpperCase() : value;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
