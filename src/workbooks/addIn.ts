/** The parts of a file that name the add-in whose functions it calls: opening the file then offers it. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** As in manifest/manifest.xml. */
export const ADD_IN = { id: "cf17abe3-5f0d-42f4-a638-61bc6900efaa", version: "0.1.0.0" };

/** Where the add-in is looked for: among those that an organization hands out to its members. */
const STORE = "EXCatalog";

/** Of the reference within a file; any will do, since a file holds one. */
const INSTANCE = "9d6a7c52-3a80-4c0e-9b1c-55f0a5a0d1e7";

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
const OFFICE = "http://schemas.microsoft.com/office";
const R = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';

/** The list of a workbook's add-in functions. */
const FUNCTION_LIST = "{7C84B067-C214-45C3-A712-C9D94CD141B2}";

/** @param functions names of the QUILT functions that the workbook calls, such as CUTSQUARE */
export function referAddIn(bytes: Uint8Array, functions: readonly string[]): Uint8Array<ArrayBuffer> {
  const parts = unzipSync(bytes);
  const put = (path: string, text: string) => (parts[path] = strToU8(text));
  // The writer marks drawings of a fixed size with an attribute that only those that grow with their cells may carry.
  for (const path of Object.keys(parts).filter((path) => path.startsWith("xl/drawings/drawing"))) {
    put(path, strFromU8(parts[path]).replace(/<xdr:oneCellAnchor editAs="[^"]*"/g, "<xdr:oneCellAnchor"));
  }
  put("xl/webextensions/taskpanes.xml", taskPanes());
  put("xl/webextensions/_rels/taskpanes.xml.rels", paneRelationship());
  put("xl/webextensions/webextension1.xml", extension(functions));
  put(
    "[Content_Types].xml",
    strFromU8(parts["[Content_Types].xml"]).replace(
      "</Types>",
      contentType("taskpanes", "webextensiontaskpanes") + contentType("webextension1", "webextension") + "</Types>",
    ),
  );
  const type = `${OFFICE}/2011/relationships/webextensiontaskpanes`;
  const relationship = `<Relationship Id="addInPane" Type="${type}" Target="xl/webextensions/taskpanes.xml"/>`;
  put("_rels/.rels", strFromU8(parts["_rels/.rels"]).replace("</Relationships>", `${relationship}</Relationships>`));
  return new Uint8Array(zipSync(parts, { level: 6 }));
}

function contentType(part: string, kind: string): string {
  return `<Override PartName="/xl/webextensions/${part}.xml" ContentType="application/vnd.ms-office.${kind}+xml"/>`;
}

function taskPanes(): string {
  const pane = `${OFFICE}/webextensions/taskpanes/2010/11`;
  return (
    `${DECLARATION}<wetp:taskpanes xmlns:wetp="${pane}">` +
    `<wetp:taskpane dockstate="right" visibility="0" width="350" row="4">` +
    `<wetp:webextensionref ${R} r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`
  );
}

function paneRelationship(): string {
  const type = `${OFFICE}/2011/relationships/webextension`;
  return (
    `${DECLARATION}<Relationships xmlns="${RELATIONSHIPS}">` +
    `<Relationship Id="rId1" Type="${type}" Target="webextension1.xml"/></Relationships>`
  );
}

function extension(functions: readonly string[]): string {
  const ids = functions.map((name) => `<we:customFunctionIds>_xldudf_QUILT_${name}</we:customFunctionIds>`).join("");
  return (
    `${DECLARATION}<we:webextension xmlns:we="${OFFICE}/webextensions/webextension/2010/11" id="{${INSTANCE}}">` +
    `<we:reference id="${ADD_IN.id}" version="${ADD_IN.version}" store="${STORE}" storeType="${STORE}"/>` +
    `<we:alternateReferences/><we:properties/><we:bindings/><we:snapshot ${R}/>` +
    `<we:extLst><a:ext xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" uri="${FUNCTION_LIST}">` +
    `<we:customFunctionIdList>${ids}</we:customFunctionIdList></a:ext></we:extLst></we:webextension>`
  );
}
