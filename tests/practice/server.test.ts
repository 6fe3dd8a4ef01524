/** What the server of `npm start` gives, and what it refuses. */
import { once } from "node:events";
import { rmSync, symlinkSync } from "node:fs";
import { createServer, request } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { BUILDING, ROOT, Started } from "./started";

let started: Started;

beforeAll(async () => {
  started = await Started.start();
}, BUILDING);

afterAll(() => started.stop());

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

/** Asks with the path exactly as it is written; fetch would tidy it first. */
function ask(path: string, { host, method = "GET" }: { host?: string; method?: string } = {}): Promise<Answer> {
  const { port } = new URL(started.address);
  return new Promise((resolve, reject) => {
    const asked = request({ host: "127.0.0.1", port, path, method, headers: host ? { host } : {} }, (answer) => {
      let body = "";
      answer.on("data", (text: Buffer) => (body += text.toString()));
      answer.on("end", () => {
        resolve({ status: answer.statusCode ?? 0, headers: answer.headers, body });
      });
    });
    asked.on("error", reject);
    asked.end();
  });
}

test("it says where the page is and what to type", () => {
  expect(started.said).toContain(started.address);
  expect(started.said).toContain("=QUILT.CUTHALFSQUARE(3)");
});

test("the page, and the way to it", async () => {
  const page = await ask("/practice/");
  expect(page.status).toBe(200);
  expect(page.body).toContain("<title>Piecewise practice sheet</title>");
  expect(await ask("/")).toMatchObject({ status: 302, headers: { location: "/practice/" } });
  expect(await ask("/practice/practice.js", { method: "HEAD" })).toMatchObject({
    status: 200,
    body: "",
    headers: { "content-type": "text/javascript; charset=utf-8" },
  });
});

test("every answer carries the strict headers", async () => {
  for (const path of ["/practice/", "/practice/practice.js", "/nowhere", "/"]) {
    const { headers } = await ask(path);
    const policy = String(headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain("unsafe-eval");
    expect(policy.match(/unsafe-inline/g)).toHaveLength(1);
    expect(headers).toMatchObject({
      "x-content-type-options": "nosniff",
      "cross-origin-resource-policy": "same-origin",
    });
  }
});

test("the page's own policy allows no more than the server's", async () => {
  const { headers, body } = await ask("/practice/");
  const own = /http-equiv="Content-Security-Policy"\s+content="([^"]+)"/.exec(body)?.[1];
  expect(`${own}; frame-ancestors 'none'`).toBe(headers["content-security-policy"]);
  expect(body).not.toMatch(/<script(?![^>]*\bsrc=)|\son\w+=/);
});

test.each([
  "/../package.json",
  "/practice/../../package.json",
  "/..%2fpackage.json",
  "/practice/..%2f..%2fpackage.json",
  "/%252e%252e/package.json",
  "/..%252fpackage.json",
  "/practice/..;/..;/package.json",
  "/%2e%2e/package.json",
  "/practice/..%5c..%5cpackage.json",
  "/practice\\..\\..\\package.json",
  "/practice/%c0%ae%c0%ae/%c0%ae%c0%ae/package.json",
  "//etc/passwd",
  "/etc/passwd",
  "//localhost/practice/index.html",
  "/practice/%00",
  "/practice/index.html%00.png",
  "/practice/index.html/",
  "/%zz",
  "/.git/config",
  "/practice",
  "http://127.0.0.1/etc/passwd",
  "http://quilts.example/practice/index.html",
  "file:///etc/passwd",
  "*",
])("nothing is found at %s", async (path) => {
  expect((await ask(path)).status).toBe(404);
});

test("a link in the folder leads nowhere outside of it", async () => {
  const links = { file: "package.json", folder: "docs" };
  for (const [name, target] of Object.entries(links))
    symlinkSync(join(ROOT, target), join(ROOT, "dist", `link-${name}`));
  try {
    expect((await ask("/link-file")).status).toBe(404);
    expect((await ask("/link-folder/README.md")).status).toBe(404);
  } finally {
    for (const name of Object.keys(links)) rmSync(join(ROOT, "dist", `link-${name}`));
  }
});

test("other computers reach nothing: only this one's own address is listened at", async () => {
  const port = Number(new URL(started.address).port);
  const others = Object.values(networkInterfaces())
    .flatMap((entries) => entries ?? [])
    .filter(({ internal, family }) => !internal && family === "IPv4")
    .map(({ address }) => address);
  for (const host of [...others, "127.0.0.2"]) await expect(connects(host, port)).resolves.toBe(false);
  await expect(connects("127.0.0.1", port)).resolves.toBe(true);
});

function connects(host: string, port: number): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect({ host, port, timeout: 5000 });
    const end = (reached: boolean) => {
      socket.destroy();
      resolve(reached);
    };
    socket.on("connect", () => {
      end(true);
    });
    for (const event of ["error", "timeout"]) {
      socket.on(event, () => {
        end(false);
      });
    }
  });
}

test.each(["quilts.example", "localhost.quilts.example", "127.0.0.1.quilts.example:3210", "0.0.0.0", ""])(
  "a page that calls this computer %p is refused",
  async (host) => {
    expect((await ask("/practice/", { host: host || " " })).status).toBeGreaterThanOrEqual(400);
  },
);

test("nothing is taken in", async () => {
  for (const method of ["POST", "PUT", "DELETE", "OPTIONS"]) {
    expect((await ask("/practice/", { method })).status).toBe(405);
  }
});

test("where the port is taken by something else, it takes another, and says what that means", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await once(other, "listening");
  const { port } = other.address() as AddressInfo;
  try {
    const second = await Started.start(port);
    expect(new URL(second.address).port).not.toBe(String(port));
    expect(second.said).toContain(`Port ${port} is taken`);
    await second.stop();
  } finally {
    other.close();
    other.closeAllConnections();
  }
});

test("started once more, it leads to the one that runs, where the sheets are", async () => {
  const port = Number(new URL(started.address).port);
  await expect(Started.start(port)).rejects.toThrow(`The practice sheet is running already:\n\n    ${started.address}`);
});
