/** The practice sheet as `npm start` serves it, built first where that is needed. */
import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";

export const ROOT = join(__dirname, "../..");

/** Building takes half a minute, or some on a busy machine. */
export const BUILDING = 300_000;

export class Started {
  private constructor(
    private readonly server: ChildProcess,
    /** Of the page, such as http://localhost:3210/practice/. */
    readonly address: string,
    readonly said: string,
  ) {}

  /** @param port 0 for any free one */
  static start(port = 0): Promise<Started> {
    const env = { ...process.env, CI: "true", PIECEWISE_PORT: String(port) };
    const server = spawn(process.execPath, ["scripts/start.mjs"], { cwd: ROOT, env });
    return new Promise((resolve, reject) => {
      let [said, complaint] = ["", ""];
      server.stderr.on("data", (text: Buffer) => (complaint += text.toString()));
      server.stdout.on("data", (text: Buffer) => {
        said += text.toString();
        const address = /http:\/\/localhost:\d+\/practice\//.exec(said)?.[0];
        if (address && said.includes("Ctrl+C")) resolve(new Started(server, address, said));
      });
      server.on("exit", () => {
        reject(new Error(`the server ended: ${complaint}${said}`));
      });
    });
  }

  stop(): Promise<void> {
    return new Promise((resolve) => {
      this.server.removeAllListeners("exit");
      this.server.once("exit", () => {
        resolve();
      });
      this.server.kill();
    });
  }
}
