/** Serves a folder to this computer only: no other computer, no other website in the browser, and nothing outside the folder. */
import { createHash } from "node:crypto";
import { createReadStream, realpathSync, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, sep } from "node:path";

const HOST = "127.0.0.1";

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".md": "text/markdown; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".xlsx": "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  ".xml": "application/xml; charset=utf-8",
};

/** The grid sets styles from its script, which needs 'unsafe-inline' for styles; scripts come from files only. */
const HEADERS = {
  "Content-Security-Policy":
    "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self'; " +
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Permissions-Policy": "camera=(), geolocation=(), microphone=()",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
  "Cache-Control": "no-cache",
};

/** Tells one server from another without telling where its folder is. */
const MARK = "Piecewise-Folder";

function markOf(root) {
  return createHash("sha256").update(root).digest("hex");
}

/** Whether a server of this program serves the same folder at a port already. */
export async function isServed({ folder, port }) {
  try {
    const signal = AbortSignal.timeout(2000);
    const { headers } = await fetch(`http://${HOST}:${port}/`, { method: "HEAD", redirect: "manual", signal });
    return headers.get(MARK) === markOf(realpathSync(folder));
  } catch {
    return false;
  }
}

/**
 * Starts serving.
 * @param {{ folder: string, port: number, start?: string }} options `port` 0 takes any free one; `start` is the page that / leads to
 * @returns {Promise<{ address: string, port: number, usualPort: boolean, close(): Promise<void> }>}
 */
export async function serve({ folder, port, start = "/" }) {
  const root = realpathSync(folder);
  const server = createServer((request, response) => {
    response.setHeader(MARK, markOf(root));
    answer(request, response, root, start);
  });
  const usualPort = await listen(server, port);
  if (!usualPort) await listen(server, 0);
  const taken = server.address().port;
  return {
    address: `http://localhost:${taken}${start}`,
    port: taken,
    usualPort,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Whether the port could be had: another program may hold it, or the system may keep it for itself. */
function listen(server, port) {
  return new Promise((resolve, reject) => {
    const taken = ({ code }) => ["EADDRINUSE", "EACCES"].includes(code) && port !== 0;
    const refused = (error) => (taken(error) ? resolve(false) : reject(error));
    server.once("error", refused);
    server.listen(port, HOST, () => {
      server.off("error", refused);
      resolve(true);
    });
  });
}

function answer(request, response, root, start) {
  const refuse = (status, sentence) => {
    response.writeHead(status, { ...HEADERS, "Content-Type": "text/plain; charset=utf-8" });
    response.end(request.method === "HEAD" ? undefined : `${sentence}\n`);
  };
  if (!isThisComputer(request.headers.host)) return refuse(421, "This address is for this computer only.");
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(405, "Only reading is possible here.");
  const path = request.url.split(/[?#]/)[0];
  if (path === "/" && start !== "/") {
    response.writeHead(302, { ...HEADERS, Location: start });
    return response.end();
  }
  const found = fileFor(path, root);
  if (!found) return refuse(404, "There is no such page.");
  const type = TYPES[extname(found.file)] ?? "application/octet-stream";
  response.writeHead(200, { ...HEADERS, "Content-Type": type, "Content-Length": found.size });
  if (request.method === "HEAD") return response.end();
  // A build may take the file away meanwhile.
  createReadStream(found.file)
    .on("error", () => response.destroy())
    .pipe(response);
}

/** A page of another site can point a name of its own at this computer; the name then gives it away. */
function isThisComputer(host = "") {
  return /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host);
}

/** The file behind a path and its size, if there is one inside the folder. */
function fileFor(path, root) {
  let plain;
  try {
    plain = decodeURIComponent(path);
  } catch {
    return undefined;
  }
  if (/[\\\0]|\/\.|\/\//.test(plain) || !plain.startsWith("/")) return undefined;
  try {
    const file = realpathSync(join(root, plain.endsWith("/") ? `${plain}index.html` : plain));
    const about = statSync(file);
    return file.startsWith(root + sep) && about.isFile() ? { file, size: about.size } : undefined;
  } catch {
    return undefined;
  }
}
