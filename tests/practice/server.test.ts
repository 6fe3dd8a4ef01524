/** What the server of `npm start` gives, and what it refuses. */
import { request } from "node:http";
import { BUILDING, Started } from "./started";

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
  "/%2e%2e/package.json",
  "/practice/..%5c..%5cpackage.json",
  "//etc/passwd",
  "/etc/passwd",
  "/practice/%00",
  "/%zz",
  "/.git/config",
  "/practice",
  "http://127.0.0.1/etc/passwd",
])("nothing is found at %s", async (path) => {
  expect((await ask(path)).status).toBe(404);
});

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

test("a second one takes another port, and says what that means", async () => {
  const second = await Started.start();
  expect(second.address).not.toBe(started.address);
  expect(second.said).toMatch(/Port 3210 is taken/);
  await second.stop();
});
