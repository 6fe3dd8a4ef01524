/** A server of plain files as any host has one: no headers but the type, so that a page stands on its own policy. */
import { existsSync, readFileSync, statSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

const TYPES: Record<string, string> = {
  ".css": "text/css",
  ".html": "text/html",
  ".js": "text/javascript",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".xml": "application/xml",
};

export interface PlainServer {
  /** Such as http://localhost:1234/quilts, without a slash at its end. */
  readonly address: string;
  /** The paths that were asked for, in order. */
  readonly asked: string[];
  stop(): Promise<void>;
}

/** @param under the path at which the folder stands, such as /quilts */
export async function serveFolder(folder: string, under = ""): Promise<PlainServer> {
  const asked: string[] = [];
  const server = createServer(({ url = "/" }, response) => {
    asked.push(url);
    const { pathname } = new URL(url, "http://localhost");
    const path = join(folder, decodeURIComponent(pathname).slice(under.length));
    const file = existsSync(path) && statSync(path).isDirectory() ? join(path, "index.html") : path;
    if (!pathname.startsWith(`${under}/`) || !existsSync(file)) {
      response.writeHead(404).end();
      return;
    }
    const type = TYPES[extname(file)] ?? "application/octet-stream";
    response.writeHead(200, { "Content-Type": type, "Access-Control-Allow-Origin": "*" }).end(readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}${under}`,
    asked,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => {
          resolve();
        });
        server.closeAllConnections();
      }),
  };
}
